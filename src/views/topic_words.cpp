// What a claim is about, in words that do not depend on the names that a person gives.
#include "views/topic_words.h"

#include <string_view>
#include <vector>

#include "ohmfold/render.h"

namespace ohmfold {

namespace views {
namespace {

Words parts_words(const Problem& problem, const std::vector<PartId>& parts) {
  std::vector<Words> names;
  names.reserve(parts.size());
  for (const PartId part : parts) names.push_back(say(Run(PartName{problem.part(part).name})));
  return listed(names);
}

/// One part, or what several are combined into.
Words whole_words(const Problem& problem, const std::vector<PartId>& parts) {
  const Words names = parts_words(problem, parts);
  return parts.size() > 1 ? say(names, " combined") : names;
}

Run point(const Problem& problem, PointId id) {
  return PointName{problem.point(id)};
}

Words pair_words(const Problem& problem, const Topic& topic) {
  return say(point(problem, topic.at), " and ", point(problem, topic.to));
}

Words quantity_words(const Problem& problem, const Topic& topic) {
  switch (topic.claimed) {
    case Claimed::current:
      return say("current through ", whole_words(problem, topic.parts));
    case Claimed::voltage:
      return say("voltage across ", whole_words(problem, topic.parts));
    case Claimed::power:
      return say("power in ", whole_words(problem, topic.parts));
    case Claimed::value:
      return say("value of ", whole_words(problem, topic.parts));
    case Claimed::voltage_between:
      return say("voltage between ", pair_words(problem, topic));
    case Claimed::potential:
      return say("potential at ", point(problem, topic.at));
    case Claimed::resistance_between:
      return say("resistance between ", pair_words(problem, topic));
    case Claimed::resistance_seen_by:
      return say("resistance seen by ", whole_words(problem, topic.parts));
    case Claimed::whole_resistance:
      return say("equivalent resistance");
  }
  return {};
}

std::string_view rewriting_word(RuleName rule) {
  return rule == RuleName::star_delta ? " from star to delta" : " from delta to star";
}

}  // namespace

Words topic_words(const Problem& problem, const Topic& topic) {
  switch (topic.kind) {
    case Topic::Kind::combination:
      return whole_words(problem, topic.parts);
    case Topic::Kind::rewriting:
      return say(parts_words(problem, topic.parts), rewriting_word(topic.rule));
    case Topic::Kind::quantity:
      return quantity_words(problem, topic);
    case Topic::Kind::same_potential:
      return say(pair_words(problem, topic), " at the same potential");
    case Topic::Kind::no_current:
      return say("no current through ", whole_words(problem, topic.parts));
    case Topic::Kind::no_pair:
      return say("no series or parallel pair left");
    case Topic::Kind::named_wrongly:
      return topic.name.empty() ? say("what names nothing known")
                                : say("what is named \"", topic.name, "\"");
  }
  return {};
}

}  // namespace views

std::string render_topic(const Problem& problem, const Topic& topic, Letters letters) {
  return views::plain_text(views::topic_words(problem, topic), letters);
}

}  // namespace ohmfold
