// A document as one self-contained page: head, contents, problems.
#include "handout/html_page.h"

#include <algorithm>

#include "drawing/svg.h"
#include "drawing/xml.h"
#include "handout/html_assets.h"
#include "handout/html_blocks.h"
#include "handout/workbook.h"
#include "views/page_words.h"

namespace ohmfold::handout {

namespace {

namespace page = views::page;

/// The policy keeps the page from fetching or sending anything, whatever stands in it.
std::string head(const std::string& title, bool workbook) {
  std::string html = "<head>\n<meta charset=\"utf-8\" />\n";
  html += "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\" />\n";
  html += R"(<meta http-equiv="Content-Security-Policy" content="default-src 'none'; )"
          "style-src 'unsafe-inline'; script-src 'unsafe-inline'; base-uri 'none'; "
          "form-action 'none'\" />\n";
  html += "<meta name=\"color-scheme\" content=\"light dark\" />\n<title>" + title + "</title>\n";
  html += "<style>\n" + std::string(kPageStyle) + drawing::svg_style();
  if (workbook) html += kWorkbookStyle;
  html += std::string(kPrintStyle) + "</style>\n";
  return html + "</head>\n";
}

/// Headings of two levels as nested lists: the titles of several problems and their chapters, or
/// the chapters of one and their sections.
class Contents {
 public:
  explicit Contents(int top) : top_(top) {}

  void add(const Section& section) {
    if (section.level < top_ || section.level > top_ + 1) return;
    const bool deeper = section.level > top_;
    if (entries_ == 0 && deeper) return;
    ++entries_;
    if (deeper) {
      html_ += inside_ ? "</li>\n" : "\n<ol>\n";
    } else {
      html_ += inside_ ? "</li>\n</ol>\n</li>\n" : entries_ > 1 ? "</li>\n" : "";
    }
    inside_ = deeper;
    html_ += R"(<li><a href="#)" + section.id + R"(">)" + section.words + "</a>";
  }

  /// Nothing where there is nothing to choose from.
  [[nodiscard]] std::string written() const {
    constexpr std::size_t kFewest = 3;
    if (entries_ < kFewest) return {};
    return "<nav aria-labelledby=\"contents\">\n<h2 id=\"contents\">" +
           std::string(page::kContents) + "</h2>\n<ol>\n" + html_ +
           (inside_ ? "</li>\n</ol>\n" : "") + "</li>\n</ol>\n</nav>\n";
  }

 private:
  int top_;
  std::string html_;
  std::size_t entries_ = 0;
  bool inside_ = false;
};

}  // namespace

std::size_t count_problems(const views::Document& document) {
  return static_cast<std::size_t>(
      std::count_if(document.blocks.begin(), document.blocks.end(), [](const auto& block) {
        const auto* heading = std::get_if<views::Heading>(&block);
        return heading != nullptr && heading->level == 1;
      }));
}

std::string html_page(const views::Document& document, const PageOptions& options) {
  const bool several = count_problems(document) != 1;
  const std::string title = drawing::xml_text(options.title);
  const WrittenDocument written = write_blocks(document, options);
  Contents contents(several ? 1 : 2);
  for (const Section& section : written.sections) contents.add(section);

  // The title comes first, then what leads through the page, then the text.
  std::string lead = contents.written();
  if (options.workbook) lead += workbook_bar();
  lead += "<div id=\"text\" tabindex=\"-1\"></div>\n";
  std::string text = written.html;
  if (several) lead.insert(0, "<h1>" + title + "</h1>\n");
  text.insert(several ? 0 : written.after_title, lead);

  std::string html =
      "<!DOCTYPE html>\n<html lang=\"en\">\n" + head(title, options.workbook) + "<body>\n";
  html += R"(<a class="skip" href="#text">)" + std::string(page::kSkip) + "</a>\n<main";
  if (options.workbook) html += R"( data-key=")" + workbook_key(written.html) + R"(")";
  html += ">\n" + text + "</main>\n";
  if (options.workbook) {
    html +=
        "<script>\n" + std::string(kWorkbookJudge) + std::string(kWorkbookScript) + "</script>\n";
  }
  return html + "</body>\n</html>\n";
}

}  // namespace ohmfold::handout
