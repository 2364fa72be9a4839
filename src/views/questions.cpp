// Questions in words and symbols.
#include "views/questions.h"

namespace ohmfold::views {

namespace {

class QuestionReader {
 public:
  explicit QuestionReader(const Problem& problem) : problem_(problem) {}

  Words operator()(const CurrentThrough& q) const {
    return say("the current through ", part(q.part));
  }
  Words operator()(const VoltageAcross& q) const {
    return say("the voltage across ", part(q.part));
  }
  Words operator()(const VoltageBetween& q) const {
    return say("the voltage from ", point(q.from), " to ", point(q.to));
  }
  Words operator()(const PotentialAt& q) const { return say("the potential at ", point(q.point)); }
  Words operator()(const PowerIn& q) const {
    switch (problem_.part(q.part).kind) {
      case PartKind::battery:
        return say("the power that battery ", part(q.part), " delivers");
      case PartKind::current_source:
        return say("the power that source ", part(q.part), " delivers");
      default:
        return say("the power in ", part(q.part));
    }
  }
  Words operator()(const TheveninBetween& q) const {
    return say("the Thevenin equivalent between ", point(q.from), " and ", point(q.to));
  }
  Words operator()(const ResistanceBetween& q) const {
    return say("the resistance between ", point(q.from), " and ", point(q.to));
  }
  Words operator()(const ResistanceSeenBy& q) const {
    const bool battery = problem_.part(q.battery).kind == PartKind::battery;
    return say("the resistance that ", battery ? "battery " : "source ", part(q.battery), " sees");
  }
  Words operator()(const ValueOf& q) const {
    const bool battery = problem_.part(q.part).kind == PartKind::battery;
    return say(battery ? "the voltage of battery " : "the resistance of ", part(q.part));
  }

 private:
  Run part(PartId id) const { return PartName{problem_.part(id).name}; }
  Run point(PointId id) const { return PointName{problem_.point(id)}; }

  const Problem& problem_;
};

class SymbolReader {
 public:
  explicit SymbolReader(const Symbols& symbols) : symbols_(symbols) {}

  Expression operator()(const CurrentThrough& q) const { return symbols_.current(q.part); }
  Expression operator()(const VoltageAcross& q) const { return symbols_.voltage(q.part); }
  Expression operator()(const VoltageBetween& q) const { return symbols_.between(q.from, q.to); }
  Expression operator()(const PotentialAt& q) const { return symbols_.potential(q.point); }
  Expression operator()(const PowerIn& q) const { return symbols_.power(q.part); }
  Expression operator()(const ResistanceBetween& q) const {
    return symbols_.between(q.from, q.to, "R");
  }
  Expression operator()(const ResistanceSeenBy&) const { return Symbols::equivalent(); }
  Expression operator()(const TheveninBetween& q) const { return symbols_.between(q.from, q.to); }
  Expression operator()(const ValueOf& q) const { return symbols_.value(q.part); }

 private:
  const Symbols& symbols_;
};

}  // namespace

Words question_words(const Question& question, const Problem& problem) {
  return std::visit(QuestionReader(problem), question);
}

Expression question_symbol(const Question& question, const Symbols& symbols) {
  return std::visit(SymbolReader(symbols), question);
}

}  // namespace ohmfold::views
