package rallywright.engine.plan;

import java.util.HashMap;
import java.util.Map;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.odds.GameOdds;
import rallywright.engine.odds.RallyMoments;
import rallywright.engine.pace.GameTime;
import rallywright.engine.pace.RallyPace;
import rallywright.engine.pace.Timing;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Score;

/** How long games take, each computed once. */
final class GameLengths {

  private final DrillPaces paces;
  private final Map<Question, Timing> answers = new HashMap<>();
  private final Map<DrillKey, RallyPace> known = new HashMap<>();

  private record Question(DrillKey drill, Matchup matchup, HeadStart start) {}

  GameLengths(DrillPaces paces) {
    this.paces = paces;
  }

  double roleSeconds() {
    return paces.roleSeconds();
  }

  RallyPace pace(Drill drill) {
    return known.computeIfAbsent(drill.key(), key -> paces.of(drill, drill.scored().orElseThrow()));
  }

  Timing of(Drill drill, Matchup matchup, HeadStart start) {
    return answers.computeIfAbsent(
        new Question(drill.key(), matchup, start), question -> compute(drill, question));
  }

  private Timing compute(Drill drill, Question question) {
    DrillForm.Scored game = drill.scored().orElseThrow();
    Score start = Score.of(question.start().a(), question.start().b());
    GameFormat format = game.format().withStart(start);
    RallyMoments rallies = GameOdds.of(format, question.matchup().chances(game)).rallies();
    return GameTime.of(rallies, pace(drill));
  }
}
