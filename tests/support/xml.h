// A strict reader of XML 1.0 without document types: a text that is not well-formed throws. It
// shares no code with what writes. Pages of HTML that are written as XML can be read as well.
#pragma once

#include <algorithm>
#include <charconv>
#include <cstdint>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace ohmfold::support {

class XmlFault : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

/// An element, or with an empty name a run of character data.
struct XmlNode {
  std::string name;
  std::string text;  ///< of character data, references resolved
  std::vector<std::pair<std::string, std::string>> attributes;
  std::vector<std::size_t> children;
  std::size_t parent = SIZE_MAX;

  [[nodiscard]] bool has(std::string_view attribute) const {
    return std::ranges::any_of(attributes, [&](const auto& one) { return one.first == attribute; });
  }
  /// "" where there is none.
  [[nodiscard]] std::string operator[](std::string_view attribute) const {
    for (const auto& [key, value] : attributes) {
      if (key == attribute) return value;
    }
    return {};
  }
  /// Is `word` among the words of its class attribute?
  [[nodiscard]] bool is_of(std::string_view word) const {
    return (" " + (*this)["class"] + " ").find(" " + std::string(word) + " ") != std::string::npos;
  }
};

/// Nodes in the order of the text; the first is the root.
struct Xml {
  std::vector<XmlNode> nodes;

  [[nodiscard]] const XmlNode& root() const { return nodes.front(); }
  /// All character data below the node, in order.
  [[nodiscard]] std::string text_of(std::size_t node) const {
    std::string text;
    std::vector<std::size_t> open{node};
    while (!open.empty()) {
      const XmlNode& at = nodes[open.back()];
      open.pop_back();
      text += at.text;
      open.insert(open.end(), at.children.rbegin(), at.children.rend());
    }
    return text;
  }
  /// The first element of that name, or SIZE_MAX.
  [[nodiscard]] std::size_t find(std::string_view name) const {
    const auto found =
        std::ranges::find_if(nodes, [&](const XmlNode& node) { return node.name == name; });
    return found == nodes.end() ? SIZE_MAX : static_cast<std::size_t>(found - nodes.begin());
  }
};

enum class XmlDialect {
  xml,
  html  ///< after <!DOCTYPE html>; what stands in script and style is no markup
};

class XmlReader {
 public:
  XmlReader(std::string_view text, XmlDialect dialect) : text_(text), dialect_(dialect) {}

  Xml read() {
    check_characters(text_);
    if (dialect_ == XmlDialect::html) {
      expect("<!DOCTYPE html>");
    } else if (take("<?xml ")) {
      skip_past("?>");
    }
    while (at_ < text_.size()) read_one();
    if (!open_.empty()) fault("an element is not closed: " + xml_.nodes[open_.back()].name);
    if (xml_.nodes.empty()) fault("there is no element");
    return std::move(xml_);
  }

 private:
  [[noreturn]] void fault(const std::string& what) const {
    throw XmlFault(what + " at byte " + std::to_string(at_) + ": " +
                   std::string(text_.substr(at_ < 30 ? 0 : at_ - 30, 60)));
  }
  [[nodiscard]] bool is_next(std::string_view word) const {
    return text_.substr(at_).starts_with(word);
  }
  bool take(std::string_view word) {
    if (!is_next(word)) return false;
    at_ += word.size();
    return true;
  }
  void expect(std::string_view word) {
    if (!take(word)) fault("no " + std::string(word));
  }
  std::string_view skip_past(std::string_view word) {
    const std::size_t end = text_.find(word, at_);
    if (end == std::string_view::npos) fault("no " + std::string(word) + " to the end");
    const std::string_view between = text_.substr(at_, end - at_);
    at_ = end + word.size();
    return between;
  }
  static bool is_space(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }
  bool skip_space() {
    const std::size_t begin = at_;
    while (at_ < text_.size() && is_space(text_[at_])) ++at_;
    return at_ > begin;
  }

  /// The character at `at`, which moves on behind it.
  char32_t next_character(std::string_view text, std::size_t& at) const {
    const auto byte = [&](std::size_t i) -> unsigned {
      return i < text.size() ? static_cast<unsigned char>(text[i]) : 0;
    };
    const unsigned first = byte(at);
    const std::size_t more = first < 0x80                     ? 0
                             : first >= 0xC2 && first <= 0xDF ? 1
                             : first >= 0xE0 && first <= 0xEF ? 2
                             : first >= 0xF0 && first <= 0xF4 ? 3
                                                              : 9;
    if (more == 9) fault("bytes that are no UTF-8");
    char32_t code = more == 0 ? first : first & (0x3FU >> more);
    for (std::size_t i = 1; i <= more; ++i) {
      if ((byte(at + i) & 0xC0U) != 0x80U) fault("bytes that are no UTF-8");
      code = code << 6U | (byte(at + i) & 0x3FU);
    }
    const bool overlong = (more == 2 && code < 0x800) || (more == 3 && code < 0x10000);
    if (overlong || code > 0x10FFFF) fault("bytes that are no UTF-8");
    at += more + 1;
    return code;
  }
  static bool is_allowed(char32_t c) {
    return c == 0x9 || c == 0xA || c == 0xD || (c >= 0x20 && c <= 0xD7FF) ||
           (c >= 0xE000 && c <= 0xFFFD) || (c >= 0x10000 && c <= 0x10FFFF);
  }
  void check_characters(std::string_view text) const {
    for (std::size_t at = 0; at < text.size();) {
      if (!is_allowed(next_character(text, at))) fault("a character that XML does not have");
    }
  }

  std::string read_name() {
    const auto starts = [](char c) {
      return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_' || c == ':';
    };
    const std::size_t begin = at_;
    if (at_ == text_.size() || !starts(text_[at_])) fault("no name");
    while (at_ < text_.size() && (starts(text_[at_]) || text_[at_] == '-' || text_[at_] == '.' ||
                                  (text_[at_] >= '0' && text_[at_] <= '9'))) {
      ++at_;
    }
    return std::string(text_.substr(begin, at_ - begin));
  }

  static void append_utf8(std::string& text, std::uint32_t code) {
    const auto put = [&text](std::uint32_t byte) { text += static_cast<char>(byte); };
    if (code < 0x80) return put(code);
    if (code < 0x800) {
      put(0xC0U | code >> 6U);
    } else if (code < 0x10000) {
      put(0xE0U | code >> 12U);
      put(0x80U | (code >> 6U & 0x3FU));
    } else {
      put(0xF0U | code >> 18U);
      put(0x80U | (code >> 12U & 0x3FU));
      put(0x80U | (code >> 6U & 0x3FU));
    }
    put(0x80U | (code & 0x3FU));
  }

  /// Text with references, none of which may be open or unknown.
  std::string resolved(std::string_view raw) const {
    std::string text;
    for (std::size_t at = 0; at < raw.size(); ++at) {
      if (raw[at] == '<') fault("< within a text");
      if (raw[at] != '&') {
        text += raw[at];
        continue;
      }
      const std::size_t end = raw.find(';', at);
      if (end == std::string_view::npos) fault("& without ;");
      append_reference(text, raw.substr(at + 1, end - at - 1));
      at = end;
    }
    return text;
  }
  void append_reference(std::string& text, std::string_view name) const {
    constexpr std::pair<std::string_view, char> kNamed[] = {
        {"amp", '&'}, {"lt", '<'}, {"gt", '>'}, {"quot", '"'}, {"apos", '\''}};
    for (const auto& [word, c] : kNamed) {
      if (name == word) {
        text += c;
        return;
      }
    }
    if (!name.starts_with('#')) fault("an unknown reference &" + std::string(name) + ";");
    const bool hexadecimal = name.starts_with("#x");
    const std::string_view digits = name.substr(hexadecimal ? 2 : 1);
    std::uint32_t code = 0;
    const auto [end, error] =
        std::from_chars(digits.data(), digits.data() + digits.size(), code, hexadecimal ? 16 : 10);
    if (error != std::errc() || end != digits.data() + digits.size() || !is_allowed(code)) {
      fault("a reference to no character");
    }
    append_utf8(text, code);
  }

  std::size_t add(XmlNode node) {
    const std::size_t index = xml_.nodes.size();
    if (open_.empty() && index > 0) fault("something beside the root");
    if (!open_.empty()) {
      node.parent = open_.back();
      xml_.nodes[open_.back()].children.push_back(index);
    }
    xml_.nodes.push_back(std::move(node));
    return index;
  }
  void add_text(std::string text) {
    if (open_.empty()) {
      if (!std::ranges::all_of(text, is_space)) fault("text beside the root");
      return;
    }
    XmlNode node;
    node.text = std::move(text);
    add(std::move(node));
  }

  void read_one() {
    if (take("<!--")) {
      skip_past("--");
      if (!take(">")) fault("-- within a comment");
    } else if (take("<![CDATA[")) {
      if (open_.empty()) fault("text beside the root");
      add_text(std::string(skip_past("]]>")));
    } else if (is_next("<!")) {
      fault("a declaration");
    } else if (take("<?")) {
      const std::string target = read_name();
      if (target == "xml") fault("a second XML declaration");
      skip_past("?>");
    } else if (take("</")) {
      close();
    } else if (take("<")) {
      open();
    } else {
      const std::string_view raw = text_.substr(at_, text_.find('<', at_) - at_);
      if (raw.find("]]>") != std::string_view::npos) fault("]]> within a text");
      add_text(resolved(raw));
      at_ += raw.size();
    }
  }

  void close() {
    const std::string name = read_name();
    skip_space();
    expect(">");
    if (open_.empty() || xml_.nodes[open_.back()].name != name)
      fault("</" + name + "> out of turn");
    open_.pop_back();
  }

  void open() {
    XmlNode node;
    node.name = read_name();
    for (bool apart = skip_space(); !is_next(">") && !is_next("/>"); apart = skip_space()) {
      if (!apart) fault("no space before an attribute");
      const std::string key = read_name();
      expect("=");
      const std::string_view quote = is_next("'") ? "'" : "\"";
      expect(quote);
      if (node.has(key)) fault("an attribute twice: " + key);
      node.attributes.emplace_back(key, resolved(skip_past(quote)));
    }
    const std::string name = node.name;
    const std::size_t index = add(std::move(node));
    if (take("/>")) return;
    expect(">");
    open_.push_back(index);
    if (dialect_ == XmlDialect::html && (name == "script" || name == "style")) {
      const std::string_view raw = text_.substr(at_, text_.find("</", at_) - at_);
      add_text(std::string(raw));
      at_ += raw.size();
    }
  }

  std::string_view text_;
  XmlDialect dialect_;
  std::size_t at_ = 0;
  std::vector<std::size_t> open_;
  Xml xml_;
};

/// Throws XmlFault where the text is not well-formed.
inline Xml read_xml(std::string_view text, XmlDialect dialect = XmlDialect::xml) {
  return XmlReader(text, dialect).read();
}

}  // namespace ohmfold::support
