// What a workbook asks before it shows a step: fields with the exact value beside them, which the
// script compares with what is typed. Whoever wants to can read it there; so can they open the
// step.
#include "handout/workbook.h"

#include <array>
#include <cstdint>

#include "drawing/xml.h"
#include "handout/html_words.h"
#include "views/amounts.h"
#include "views/page_words.h"

namespace ohmfold::handout {

namespace {

namespace page = views::page;

bool can_be_judged(const views::Asked& asked) {
  const Number& number = asked.value.number;
  return !number.is_symbolic() && !views::is_too_long_to_show(number);
}

std::string field(const views::Asked& asked, int figures, const std::string& id) {
  const std::string unit = drawing::xml_text(symbol(asked.value.unit, Letters::unicode));
  const std::string plain_unit(symbol(asked.value.unit, Letters::ascii));
  std::string html = R"(<form class="question" data-value=")" + asked.value.number.to_string() +
                     R"(" data-unit=")" + plain_unit + R"(" data-sign=")" + unit +
                     R"(" data-figures=")" + std::to_string(figures) + "\">\n";
  html += R"(<label for=")" + id + R"(">)" + html_words(asked.question) +
          R"( <span class="unit">()" + unit + ")</span></label>\n";
  html += R"(<span class="answer"><input type="text" id=")" + id +
          R"(" maxlength="60" autocomplete="off" autocapitalize="none" spellcheck="false" )"
          R"(aria-describedby=")" +
          id + R"(-remark" /> <button type="submit">)" + std::string(page::kCheck) +
          "</button></span>\n";
  html += R"(<output class="remark" id=")" + id + R"(-remark" for=")" + id + "\"></output>\n";
  return html + "</form>\n";
}

}  // namespace

std::string workbook_fields(const std::vector<views::Asked>& asked, int figures,
                            const std::string& id) {
  std::string fields;
  for (std::size_t i = 0; i < asked.size(); ++i) {
    if (!can_be_judged(asked[i])) continue;
    fields += field(asked[i], figures, id + "-value-" + std::to_string(i + 1));
  }
  if (fields.empty()) return fields;
  return "<div class=\"ask\" hidden=\"\">\n" + fields + "</div>\n";
}

std::string workbook_bar() {
  const auto button = [](std::string_view id, std::string_view words) {
    return R"(<button type="button" id=")" + std::string(id) + R"(">)" + drawing::xml_text(words) +
           "</button>\n";
  };
  std::string html = R"(<div id="progress" role="group" aria-label=")" +
                     std::string(page::kProgress) +
                     "\" hidden=\"\">\n<output id=\"shown\"></output>\n";
  html += button("show-all", page::kShowAll) + button("start-again", page::kStartAgain) +
          "</div>\n<ul id=\"remarks\" hidden=\"\">\n";
  for (const views::WorkbookRemark& remark : views::workbook_remarks()) {
    html +=
        R"(<li data-key=")" + remark.key + R"(">)" + drawing::xml_text(remark.words) + "</li>\n";
  }
  return html + "</ul>\n";
}

// FNV-1a with 64 bits (Fowler, Noll, Vo): other documents get other names, and no more is needed.
std::string workbook_key(const std::string& text) {
  constexpr std::uint64_t kBasis = 0xCBF29CE484222325U;
  constexpr std::uint64_t kPrime = 0x100000001B3U;
  constexpr std::array<char, 16> kDigits{'0', '1', '2', '3', '4', '5', '6', '7',
                                         '8', '9', 'a', 'b', 'c', 'd', 'e', 'f'};
  std::uint64_t hash = kBasis;
  for (const char c : text) {
    hash ^= static_cast<unsigned char>(c);
    hash *= kPrime;
  }
  std::string key = "ohmfold-";
  for (int shift = 60; shift >= 0; shift -= 4) key += kDigits.at((hash >> shift) & 0xFU);
  return key;
}

}  // namespace ohmfold::handout
