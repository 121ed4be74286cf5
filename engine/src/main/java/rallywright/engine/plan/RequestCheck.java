package rallywright.engine.plan;

import java.util.List;
import java.util.Optional;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.SkillGroup;

/** Answers requests that contradict each other or name what is not there, each in a sentence. */
final class RequestCheck {

  private final PlanProblem problem;
  private final List<String> sentences;

  private RequestCheck(PlanProblem problem, List<String> sentences) {
    this.problem = problem;
    this.sentences = sentences;
  }

  static void problems(PlanProblem problem, List<String> sentences) {
    RequestCheck check = new RequestCheck(problem, sentences);
    for (Slot slot : problem.wish().requests().slots()) {
      if (slot instanceof Slot.Pinned pin) {
        check.aboutPin(pin);
      } else if (slot instanceof Slot.AnyOf any) {
        check.aboutGroup(any.group());
      }
    }
    check.aboutYardsticks();
    check.aboutWeights();
  }

  private void aboutPin(Slot.Pinned pin) {
    Optional<Drill> drill = find(pin.drill());
    if (drill.isEmpty()) {
      sentences.add(
          "The drill \"%s\" is asked for, but unknown. Maybe it was spelled differently."
              .formatted(pin.drill()));
      return;
    }
    String name = drill.get().name();
    if (problem.wish().requests().forbidden().contains(pin.drill())) {
      sentences.add(
          "%s is asked for and ruled out at once. Maybe take back one of the two.".formatted(name));
    } else if (!DrillLine.isPlayedOnCourt(drill.get())) {
      sentences.add("%s is a warm-up; it is planned by itself.".formatted(name) + " Maybe a game.");
    } else if (sentences.isEmpty()) {
      lineOf(drill.get(), pin.line())
          .ifPresentOrElse(
              line ->
                  new Availability(new PlanContext(problem))
                      .obstacle(line)
                      .ifPresent(obstacle -> sentences.add(askedFor(obstacle))),
              () ->
                  sentences.add(
                      "%s is not played %s. Maybe ask for it the other way."
                          .formatted(name, pin.line().words())));
    }
  }

  private static String askedFor(PlanCheck.BrokenRule obstacle) {
    return "It is asked for, but cannot be planned: " + obstacle.sentence();
  }

  private static Optional<DrillLine> lineOf(Drill drill, Line line) {
    List<DrillLine> lines = DrillLine.allOf(List.of(drill));
    return lines.stream()
        .filter(each -> each.line() == line || each.players() > 2 || !each.isScored())
        .findFirst();
  }

  private void aboutGroup(SkillGroup group) {
    long wanted =
        problem.wish().requests().slots().stream()
            .filter(slot -> slot instanceof Slot.AnyOf any && any.group() == group)
            .count();
    long allowed =
        problem.drills().stream()
            .filter(DrillLine::isPlayedOnCourt)
            .filter(drill -> !problem.wish().requests().forbidden().contains(drill.key()))
            .filter(drill -> SearchModel.groups(drill).contains(group))
            .count();
    String sentence =
        "%d drills for \"%s\" are asked for, only %d are allowed. Maybe ask for fewer."
            .formatted(wanted, group.words(), allowed);
    if (wanted > allowed && !sentences.contains(sentence)) {
      sentences.add(sentence);
    }
  }

  private void aboutYardsticks() {
    if (problem.wish().requests().yardsticks() instanceof YardstickWish.Named named) {
      for (DrillKey key : named.keys()) {
        if (problem.yardsticks().stream().noneMatch(each -> each.key().equals(key))) {
          sentences.add(
              "The test \"%s\" is asked for, but not in the catalogue. Maybe it was spelled"
                      .formatted(key)
                  + " differently.");
        } else if (problem.attendees().size() == 1 && !canBeStruckAlone(key)) {
          sentences.add(
              "The test \"%s\" needs somebody who feeds, but 1 player is there. Maybe let the coach"
                      .formatted(key)
                  + " play or feed as one more.");
        }
      }
    }
  }

  private boolean canBeStruckAlone(DrillKey key) {
    return Alone.tests(problem).stream().anyMatch(each -> each.key().equals(key));
  }

  private void aboutWeights() {
    boolean nobody =
        !problem.attendees().isEmpty()
            && problem.attendees().stream().allMatch(each -> each.weight() == 0);
    if (nobody) {
      sentences.add("Nobody's practice counts: all weights are 0. Maybe 1 for everybody.");
    }
  }

  private Optional<Drill> find(DrillKey key) {
    return problem.drills().stream().filter(drill -> drill.key().equals(key)).findFirst();
  }
}
