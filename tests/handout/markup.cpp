// Reads markup strictly.
#include <algorithm>
#include <cctype>
#include <string_view>

#include "handout/markup.h"

namespace ohmfold::test {

namespace {

bool is_name(char c) {
  return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '-' || c == ':' || c == '_';
}

class Reader {
 public:
  explicit Reader(std::string_view text) : rest_(text) {}

  Markup read() {
    if (rest_.starts_with("<!DOCTYPE html>")) rest_.remove_prefix(15);
    while (!rest_.empty() && markup_.fault.empty()) {
      if (rest_.starts_with("</")) {
        read_end();
      } else if (rest_.starts_with("<")) {
        read_begin();
      } else {
        add_text(read_text());
      }
    }
    if (markup_.fault.empty() && !open_.empty()) fault("not closed: " + top().name);
    return std::move(markup_);
  }

 private:
  void fault(const std::string& what) {
    if (markup_.fault.empty()) markup_.fault = what + " before " + std::string(rest_.substr(0, 40));
    rest_ = {};
  }

  Element& top() { return markup_.elements[open_.back()]; }

  void add_text(const std::string& text) {
    for (const std::size_t index : open_) markup_.elements[index].text += text;
    const bool blank = text.find_first_not_of(" \n\t") == std::string::npos;
    if (open_.empty() && !blank) fault("text outside");
  }

  std::string read_name() {
    std::size_t size = 0;
    while (size < rest_.size() && is_name(rest_[size])) ++size;
    std::string name(rest_.substr(0, size));
    rest_.remove_prefix(size);
    if (name.empty()) fault("no name");
    return name;
  }

  /// Up to one of the characters of `ends`.
  std::string read_until(std::string_view ends) {
    std::string text;
    while (!rest_.empty() && ends.find(rest_.front()) == std::string_view::npos) {
      if (rest_.front() == '<') fault("a stray <");
      text += read_character();
    }
    return text;
  }
  std::string read_text() { return read_until("<"); }

  std::string read_character() {
    static const std::map<std::string_view, std::string_view> kReferences = {
        {"&amp;", "&"}, {"&lt;", "<"}, {"&gt;", ">"}, {"&quot;", "\""}, {"&#39;", "'"}};
    if (rest_.empty()) return {};
    if (rest_.front() == '&') {
      for (const auto& [reference, stands_for] : kReferences) {
        if (!rest_.starts_with(reference)) continue;
        rest_.remove_prefix(reference.size());
        return std::string(stands_for);
      }
      fault("a stray &");
      return {};
    }
    const char c = rest_.front();
    if (static_cast<unsigned char>(c) < 0x20 && c != '\n' && c != '\t')
      fault("a control character");
    if (rest_.starts_with("]]>")) fault("]]>");
    if (!rest_.empty()) rest_.remove_prefix(1);
    return {c};
  }

  void read_end() {
    rest_.remove_prefix(2);
    const std::string name = read_name();
    if (open_.empty() || top().name != name) return fault("unexpected end of " + name);
    open_.pop_back();
    if (!rest_.starts_with(">")) return fault("no end");
    rest_.remove_prefix(1);
  }

  void skip_space() {
    while (!rest_.empty() && (rest_.front() == ' ' || rest_.front() == '\n'))
      rest_.remove_prefix(1);
  }

  void read_begin() {
    rest_.remove_prefix(1);
    Element element{read_name(), {}, {}, open_.size()};
    skip_space();
    while (!rest_.empty() && is_name(rest_.front())) {
      const std::string name = read_name();
      if (!rest_.starts_with("=\"")) return fault("no value of " + name);
      rest_.remove_prefix(2);
      const bool is_new = element.attributes.emplace(name, read_until("\"")).second;
      if (!is_new) return fault("twice: " + name);
      if (rest_.empty()) return fault("no end of " + name);
      rest_.remove_prefix(1);
      skip_space();
    }
    const bool empty = rest_.starts_with("/>");
    if (!empty && !rest_.starts_with(">")) return fault("no end of " + element.name);
    rest_.remove_prefix(empty ? 2 : 1);
    const std::string name = element.name;
    markup_.elements.push_back(std::move(element));
    if (empty) return;
    open_.push_back(markup_.elements.size() - 1);
    if (name != "script" && name != "style") return;
    const std::size_t end = rest_.find("</" + name);
    if (end == std::string_view::npos) return fault("not closed: " + name);
    top().text = std::string(rest_.substr(0, end));
    rest_.remove_prefix(end);
  }

  std::string_view rest_;
  Markup markup_;
  std::vector<std::size_t> open_;
};

}  // namespace

Markup read_markup(const std::string& text) {
  return Reader(text).read();
}

std::vector<Element> all_of(const Markup& markup, const std::string& name) {
  std::vector<Element> found;
  std::copy_if(markup.elements.begin(), markup.elements.end(), std::back_inserter(found),
               [&](const Element& element) { return element.name == name; });
  return found;
}

}  // namespace ohmfold::test
