// The embedded bridge and the tempting pairs in words.
#include "views/proof_chapter.h"

#include <algorithm>
#include <string_view>

#include "views/amounts.h"

namespace ohmfold::views {

namespace {

/// Parts of one path that are named, and pairs that a worked solution shows.
constexpr std::size_t kMostOnAPath = 8;
constexpr std::size_t kFewPairs = 3;

Words part_on_path(const Scene& scene, PartId part) {
  const bool is_port = scene.reduction.start.kind(part) == ElementKind::port;
  return is_port ? scene.words.described(part) : say(scene.words.part(part));
}

Words parts_on_path(const Scene& scene, const Certificate::Path& path) {
  std::vector<Words> parts;
  for (const PartId part : path.parts) parts.push_back(part_on_path(scene, part));
  Words words = listed(parts, kMostOnAPath);
  if (parts.size() > kMostOnAPath) words.add(" (" + count_text(parts.size()) + " parts)");
  return words;
}

bool has_port(const Scene& scene) {
  const PartId source = scene.reduction.source;
  return source.exists() && scene.reduction.start.kind(source) == ElementKind::port;
}

Words facts_words(const Scene& scene, const std::vector<Fact>& facts) {
  return facts.empty() ? Words() : scene.words.fact(facts.front());
}

/// What the certificate is about, where a source counts as one of the parts.
Words counting_words(const Scene& scene) {
  if (has_port(scene)) {
    return say(
        "The pair of points asked about counts as a part here: whatever feeds the network joins "
        "them.");
  }
  const bool several = !scene.reduction.source.exists();
  return say(several ? "Each battery counts as a part of its own here."
                     : "The battery counts as a part here: it closes the circuit.");
}

/// What the proof says about looking from elsewhere.
Words source_words(const Scene& scene, const Certificate& bridge) {
  if (!scene.reduction.source.exists()) {
    return say(
        "This is about steps that leave every battery where it is. What one battery sees "
        "with the others replaced by their internal resistances is told below.");
  }
  const bool on_a_path =
      std::any_of(bridge.paths.begin(), bridge.paths.end(), [&](const Certificate::Path& path) {
        return std::any_of(path.parts.begin(), path.parts.end(), [&](PartId part) {
          return is_source(scene.reduction.start.kind(part));
        });
      });
  if (!on_a_path) {
    return say("No source lies on these paths: wherever a source feeds them, the bridge is there.");
  }
  return say(has_port(scene) ? "The two points asked about" : "The battery",
             has_port(scene) ? " lie" : " lies",
             " on one of the paths: from other points the same resistors may reduce.");
}

}  // namespace

std::vector<PartId> sources_left(const Scene& scene) {
  std::vector<PartId> sources = scene.reduction.left;
  std::erase_if(sources, [&](PartId part) { return !is_source(scene.reduction.end.kind(part)); });
  return sources;
}

Words seen_by_words(const Scene& scene) {
  if (has_port(scene)) return say("the two points asked about");
  const std::vector<PartId> sources = sources_left(scene);
  return say(sources.size() == 1 ? "battery " : "batteries ", scene.words.parts(sources));
}

void add_certificate(const Scene& scene, const Certificate& bridge, Document& document) {
  document.paragraph(say("The points ", scene.words.points(bridge.corners),
                         " are four corners: each of them is joined with each other one by a path "
                         "of its own, six in all, that meet in these corners only. ",
                         counting_words(scene)));
  Table table;
  for (const char* heading : {"From", "To", "Path"}) {
    table.columns.push_back({say(heading), Align::left});
  }
  for (const Certificate::Path& path : bridge.paths) {
    table.rows.push_back({say(scene.words.point(path.from)), say(scene.words.point(path.to)),
                          parts_on_path(scene, path)});
  }
  document.table(std::move(table));
}

void add_argument(const Scene& scene, const Certificate& bridge, Document& document) {
  document.paragraph(
      say("A parallel step needs two parts between the same two points; a series step needs a "
          "point where two parts meet and nothing else. The six paths join six different pairs of "
          "corners, so no two of them can become one in parallel, and three of them meet at each "
          "corner, so none of the corners can become an inner point of a chain. A step can make a "
          "path shorter or take away what lies beside the paths; the four corners and six paths "
          "are still there after it. Where one part is left, there are no four corners. So no "
          "order of steps leads there."));
  document.paragraph(
      say("The reverse is true as well: a network without such a bridge always comes down to one "
          "part (R. J. Duffin, 1965). ",
          source_words(scene, bridge)));
}

Words pair_words(const Scene& scene, const TemptingPair& pair) {
  const Words both = say(scene.words.part(pair.first), " and ", scene.words.part(pair.second));
  switch (pair.likeness) {
    case Likeness::share_a_point:
      return say(both, " meet at point ", scene.words.point(pair.shared));
    case Likeness::opposite_sides:
      return say(both, " are opposite sides of a square of four parts");
    case Likeness::same_value:
      return say(both, " have the same resistance");
  }
  return {};
}

Words not_series_words(const Scene& scene, const TemptingPair& pair) {
  return facts_words(scene, pair.not_series);
}

Words not_parallel_words(const Scene& scene, const TemptingPair& pair) {
  return facts_words(scene, pair.not_parallel);
}

void add_pairs(const Scene& scene, const Standstill& standstill, std::size_t most,
               Document& document) {
  const std::size_t shown = std::min(most, standstill.pairs.size());
  for (std::size_t i = 0; i < shown; ++i) {
    const TemptingPair& pair = standstill.pairs[i];
    document.entry("", say(sentence(pair_words(scene, pair)),
                           " Not in series: ", not_series_words(scene, pair),
                           ". Not in parallel: ", not_parallel_words(scene, pair), "."));
  }
  const std::size_t left_out = standstill.pairs.size() - shown + standstill.more_pairs;
  if (left_out == 0) return;
  document.paragraph(say(count_text(left_out), left_out == 1 ? " pair" : " pairs",
                         " more can be ruled out in the same way."));
}

void add_proof(const Scene& scene, const CaseTrace& trace, Document& document) {
  if (!trace.bridge || !trace.standstill) return;
  document.heading(3, say("Why no step in series or parallel is left"));
  add_certificate(scene, *trace.bridge, document);
  document.paragraph(
      say("No step in series or parallel can undo that, in whatever order they are made: three "
          "paths meet at each corner, and no two paths join the same two corners. Pairs that look "
          "like one and are none:"));
  add_pairs(scene, *trace.standstill, kFewPairs, document);
}

}  // namespace ohmfold::views
