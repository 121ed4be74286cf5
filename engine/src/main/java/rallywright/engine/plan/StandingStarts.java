package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.odds.FairGame;
import rallywright.engine.odds.HeadStartSearch;
import rallywright.engine.practice.PlayerStanding;
import rallywright.engine.quantity.Probability;

/**
 * Head starts from what is known of the players: what brings the chance to win the game closest to
 * one half. A player who is not known counts as even.
 */
public final class StandingStarts implements FairStarts {

  private final Map<PlayerId, PlayerStanding> standings;
  private final Map<Pairing, HeadStart> found = new ConcurrentHashMap<>();

  private record Pairing(DrillKey drill, Matchup matchup) {}

  private StandingStarts(Map<PlayerId, PlayerStanding> standings) {
    this.standings = Map.copyOf(standings);
  }

  /**
   * Head starts between these players.
   *
   * @param attendees who will be there
   * @return the head starts
   */
  public static StandingStarts of(List<Attendee> attendees) {
    Map<PlayerId, PlayerStanding> standings = new HashMap<>();
    attendees.forEach(each -> standings.put(each.id(), each.standing()));
    return new StandingStarts(standings);
  }

  @Override
  public HeadStart of(Drill drill, Seat a, Seat b) {
    if (drill.scored().isEmpty()) {
      return HeadStart.NONE;
    }
    DrillForm.Scored game = drill.scored().get();
    boolean known =
        standings.keySet().containsAll(a.players()) && standings.keySet().containsAll(b.players());
    Matchup matchup = known ? Matchup.of(game, of(a), of(b)) : Matchup.EQUALS;
    return found.computeIfAbsent(new Pairing(drill.key(), matchup), pairing -> fair(game, matchup));
  }

  private List<PlayerStanding> of(Seat seat) {
    List<PlayerStanding> players = new ArrayList<>();
    seat.players().forEach(each -> players.add(Objects.requireNonNull(standings.get(each))));
    return players;
  }

  private static HeadStart fair(DrillForm.Scored game, Matchup matchup) {
    FairGame.HeadStart fair =
        HeadStartSearch.bestHeadStart(game.format(), matchup.chances(game), Probability.EVEN);
    return new HeadStart(fair.a(), fair.b());
  }
}
