package rallywright.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rallywright.engine.club.PlayerId;
import rallywright.engine.odds.FairGame.HeadStart;
import rallywright.engine.rotation.RotationGame;
import rallywright.engine.rotation.RotationMatch;
import rallywright.engine.rotation.RotationSchedule;
import rallywright.engine.rotation.RotationTime;

/** A rotation as one JSON object; players are their numbers. */
record RotationJson(
    List<Round> rounds,
    int partnerRepeats,
    int opponentExcess,
    double worstDifference,
    Minutes minutes) {

  record Minutes(double mean, double nineInTen) {}

  record Round(int round, List<Match> matches, List<Integer> sitting) {}

  record Match(
      int court, @Nullable Integer lane, List<Integer> a, List<Integer> b, HeadStart headStart) {}

  static RotationJson of(RotationGame game, RotationSchedule schedule, RotationTime time) {
    return new RotationJson(
        schedule.rounds().stream()
            .map(
                round ->
                    new Round(
                        round.number(),
                        round.matches().stream().map(match -> match(game, match)).toList(),
                        numbers(round.sitting())))
            .toList(),
        schedule.measures().partnerRepeats(),
        schedule.measures().opponentExcess(),
        schedule.measures().worstDifference(),
        new Minutes(time.minutesMean(), time.minutesP90()));
  }

  private static Match match(RotationGame game, RotationMatch match) {
    return new Match(
        match.court(),
        game.perCourt() > 1 ? match.lane() : null,
        numbers(match.a()),
        numbers(match.b()),
        match.headStart());
  }

  private static List<Integer> numbers(List<PlayerId> players) {
    return players.stream().map(player -> Integer.valueOf(player.value())).toList();
  }
}
