# Writes OUT, a source file that holds the text of the style sheets and scripts in FOLDER.
# Run with -DFOLDER= and -DOUT=.
set(text "// Style and scripts of a page.\n#include \"handout/html_assets.h\"\n\n")
string(APPEND text "namespace ohmfold::handout {\n\n")
foreach(pair "kPageStyle page.css" "kWorkbookStyle workbook.css" "kPrintStyle print.css"
             "kWorkbookJudge workbook_judge.js" "kWorkbookScript workbook.js")
  separate_arguments(pair)
  list(GET pair 0 name)
  list(GET pair 1 file)
  file(READ ${FOLDER}/${file} content)
  string(APPEND text "const std::string_view ${name} = R\"asset(${content})asset\";\n\n")
endforeach()
string(APPEND text "}  // namespace ohmfold::handout\n")
file(WRITE ${OUT} "${text}")
