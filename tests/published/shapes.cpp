// Enumerates series-parallel networks and goes between them, circuit files and step logs.
#include "published/shapes.h"

#include <algorithm>
#include <map>

#include "ohmfold/error.h"

namespace ohmfold::published {
namespace {

void insert_both(Shapes& into, const Shape& a, const Shape& b) {
  into.insert(joined(Join::series, {a, b}));
  into.insert(joined(Join::parallel, {a, b}));
}

/// A shape still to be laid between two points.
struct Stretch {
  const Shape* shape;
  std::string from, to;
};

bool is_number(const std::string& label) {
  return std::all_of(label.begin(), label.end(), [](char c) { return c >= '0' && c <= '9'; });
}

std::string statement(const Stretch& stretch, std::size_t number) {
  const std::string& label = stretch.shape->text;
  const bool numbered = is_number(label);
  const std::string name = numbered ? label : std::to_string(number);
  return "resistor R" + name + " = " + (numbered ? label : "1") + " ohm from " + stretch.from +
         " to " + stretch.to + "\n";
}

}  // namespace

Shape single(const std::string& label) {
  return {Join::none, label, {}};
}

Shape joined(Join join, const std::vector<Shape>& shapes) {
  ensure(shapes.size() >= 2, "two or more shapes are joined");
  Shape whole{join, "", {}};
  for (const Shape& shape : shapes) {
    if (shape.join == join) {
      whole.inner.insert(whole.inner.end(), shape.inner.begin(), shape.inner.end());
    } else {
      whole.inner.push_back(shape);
    }
  }
  std::sort(whole.inner.begin(), whole.inner.end());
  for (const Shape& shape : whole.inner) {
    whole.text += whole.text.empty() ? "(" : join == Join::series ? " + " : " | ";
    whole.text += shape.text;
  }
  whole.text += ")";
  return whole;
}

std::vector<Shapes> unlabelled_shapes(std::size_t most) {
  std::vector<Shapes> all(most + 1);
  all[1].insert(single("o"));
  for (std::size_t parts = 2; parts <= most; ++parts) {
    for (std::size_t first = 1; 2 * first <= parts; ++first) {
      for (const Shape& a : all[first]) {
        for (const Shape& b : all[parts - first]) insert_both(all[parts], a, b);
      }
    }
  }
  return all;
}

Shapes labelled_shapes(std::size_t parts) {
  // Sets of labels as bits. Each set is parted in two, the one with its lowest label first.
  std::vector<Shapes> all(std::size_t{1} << parts);
  for (std::size_t label = 0; label < parts; ++label) {
    all[std::size_t{1} << label].insert(single(std::to_string(label + 1)));
  }
  for (std::size_t set = 1; set < all.size(); ++set) {
    const std::size_t lowest = set & (~set + 1);
    for (std::size_t half = (set - 1) & set; half != 0; half = (half - 1) & set) {
      if ((half & lowest) == 0) continue;
      for (const Shape& a : all[half]) {
        for (const Shape& b : all[set ^ half]) insert_both(all[set], a, b);
      }
    }
  }
  return all.back();
}

std::string circuit_text(const Shape& shape) {
  std::string text = "battery E = 1 V from B to A\n";
  std::vector<Stretch> waiting{{&shape, "A", "B"}};
  std::size_t points = 0;
  std::size_t parts = 0;
  while (!waiting.empty()) {
    const Stretch stretch = waiting.back();
    waiting.pop_back();
    if (stretch.shape->join == Join::none) {
      text += statement(stretch, ++parts);
      continue;
    }
    std::string from = stretch.from;
    for (const Shape& inner : stretch.shape->inner) {
      const bool last = &inner == &stretch.shape->inner.back();
      const bool chain = stretch.shape->join == Join::series;
      const std::string to = !chain || last ? stretch.to : "p" + std::to_string(++points);
      waiting.push_back({&inner, from, to});
      if (chain) from = to;
    }
  }
  return text;
}

Shape shape_of(const Reduction& reduction, const std::vector<std::string>& labels) {
  std::map<PartId, Shape> shapes;
  for (std::uint32_t part = 0; part < labels.size(); ++part) {
    shapes.emplace(PartId{part}, single(labels[part]));
  }
  for (std::size_t index = 0; index < reduction.steps.size(); ++index) {
    const Step step = reduction.steps[index];
    ensure(step.rule == RuleName::series || step.rule == RuleName::parallel,
           "only series and parallel steps make a shape");
    std::vector<Shape> taken;
    for (const PartId part : step.takes) taken.push_back(shapes.at(part));
    const Join join = step.rule == RuleName::series ? Join::series : Join::parallel;
    shapes.emplace(step.makes, joined(join, taken));
  }
  return shapes.at(reduction.root);
}

}  // namespace ohmfold::published
