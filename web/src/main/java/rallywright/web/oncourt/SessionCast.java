package rallywright.web.oncourt;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rallywright.engine.club.Player;
import rallywright.engine.club.Venue;
import rallywright.engine.drill.Drill;
import rallywright.engine.plan.GameId;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.score.GameFormat;
import rallywright.engine.session.GameFormats;
import rallywright.engine.session.Session;
import rallywright.paper.DrillBook;
import rallywright.paper.FirstNames;

/**
 * What of a session stays the same while only entries come: the plan, its drills, who plays. All
 * states of the session share it, so that what follows from it is worked out once.
 */
final class SessionCast {

  private final Session session;
  private final DrillBook drills;
  private final List<Player> players;
  private final @Nullable Venue venue;
  private final Map<GameId, GameFormat> formats = new ConcurrentHashMap<>();
  private final Kept<FirstNames> names = new Kept<>();
  private final Kept<String> planMark = new Kept<>();
  private final Kept<List<String>> namesBeside = new Kept<>();

  SessionCast(Session session, DrillBook drills, List<Player> players, @Nullable Venue venue) {
    this.session = session;
    this.drills = drills;
    this.players = List.copyOf(players);
    this.venue = venue;
  }

  Session session() {
    return session;
  }

  DrillBook drills() {
    return drills;
  }

  List<Player> players() {
    return players;
  }

  boolean isIndoors() {
    return venue != null && venue.setting() == Venue.Setting.INDOOR;
  }

  Optional<Drill> drill(PlannedBlock block) {
    return drills.drills().apply(block.drill());
  }

  FirstNames names() {
    return names.or(() -> FirstNames.of(players));
  }

  GameFormat formatOf(PlannedBlock block, PlannedGame game) {
    return formats.computeIfAbsent(game.id(), id -> GameFormats.of(drill(block), block, game));
  }

  /** What tells the plan as phones get it from another one. */
  String planMark(Supplier<String> work) {
    return planMark.or(work);
  }

  /** Names of the club that do not take part. */
  List<String> namesBeside(Supplier<List<String>> work) {
    return namesBeside.or(work);
  }
}
