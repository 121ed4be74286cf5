package rallywright.web.oncourt;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.GameId;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.score.FinalScoreCheck;
import rallywright.engine.score.GameState;
import rallywright.engine.score.Rally;
import rallywright.engine.score.RoundThePost;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.CourtEvent.BlockEnded;
import rallywright.engine.session.CourtEvent.BlockLimited;
import rallywright.engine.session.CourtEvent.BlockStarted;
import rallywright.engine.session.CourtEvent.EffortRated;
import rallywright.engine.session.CourtEvent.FinalScoreGiven;
import rallywright.engine.session.CourtEvent.Finish;
import rallywright.engine.session.CourtEvent.FirstServerNamed;
import rallywright.engine.session.CourtEvent.NoteWritten;
import rallywright.engine.session.CourtEvent.RallyPlayed;
import rallywright.engine.session.CourtEvent.TimeCalled;
import rallywright.engine.session.CourtEvent.Undone;
import rallywright.engine.session.CourtEvent.YardstickCounted;
import rallywright.engine.session.EventId;
import rallywright.store.json.EventJson;
import rallywright.store.json.WrongJson;
import tools.jackson.databind.JsonNode;

/**
 * Looks at each event that a phone sent: is it an event at all, does it belong to this session and
 * its plan, can its score be. What cannot stand is answered with a sentence and not kept.
 */
final class EventGate {

  /** An id as phones make it, a UUID. Desk and tests make theirs the same way. */
  private static final Pattern ID =
      Pattern.compile("[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}");

  private static final int LONGEST_BY = 64;
  private static final long LAST_MILLIS = 253_402_300_799_999L; // the end of the year 9999
  private static final int LONGEST_ECHO = 40;

  private final OpenSession open;
  private final Map<EventId, CourtEvent> fresh = new LinkedHashMap<>();
  private final List<Answer> answers = new ArrayList<>();

  EventGate(OpenSession open) {
    this.open = open;
  }

  /** What became of an event. */
  record Answer(String id, Outcome outcome, String reason) {}

  /** What can become of an event. */
  enum Outcome {
    /** It is on the disk now. */
    STORED,
    /** It was there before. */
    KNOWN,
    /** It cannot stand and was not kept. */
    REFUSED
  }

  /** Whether a text is an id as phones make it. */
  static boolean isId(String text) {
    return ID.matcher(text).matches();
  }

  /** Looks at one event. */
  void offer(JsonNode sent) {
    String id = sent.isObject() && sent.path("id").isString() ? sent.path("id").stringValue() : "";
    Optional<String> reason;
    try {
      CourtEvent event = EventJson.read(sent.toString());
      reason = refusalOf(event);
      if (reason.isEmpty()) {
        EventId own = event.stamp().id();
        boolean before = fresh.putIfAbsent(own, event) != null || open.has(own);
        answers.add(new Answer(id, before ? Outcome.KNOWN : Outcome.STORED, ""));
        return;
      }
    } catch (WrongJson wrong) {
      reason = Optional.of(wrong.getMessage() + " Maybe load the page again.");
    }
    answers.add(new Answer(echo(id), Outcome.REFUSED, reason.orElse("")));
  }

  /** The events that can stand, in order, those that are there already among them. */
  List<CourtEvent> standing() {
    return List.copyOf(fresh.values());
  }

  /**
   * The answer to each event in order, once the disk has said what it had under another content.
   */
  List<Answer> answers(Set<EventId> differing) {
    Set<String> other = new HashSet<>();
    differing.forEach(id -> other.add(id.value()));
    return answers.stream()
        .map(
            answer ->
                answer.outcome() != Outcome.REFUSED && other.contains(answer.id())
                    ? new Answer(
                        answer.id(),
                        Outcome.REFUSED,
                        "The id ("
                            + answer.id()
                            + ") names another event already; each event needs its own. Maybe"
                            + " load the page again.")
                    : answer)
        .toList();
  }

  private Optional<String> refusalOf(CourtEvent event) {
    return stampRefusal(event.stamp()).or(() -> contentRefusal(event));
  }

  private Optional<String> stampRefusal(CourtEvent.Stamp stamp) {
    if (!ID.matcher(stamp.id().value()).matches()) {
      return refused(
          "The id (%s) must be a UUID in lower case. Maybe load the page again."
              .formatted(echo(stamp.id().value())));
    }
    if (!stamp.session().equals(open.session().id())) {
      return refused(
          "The session (%s) must be the one of this address (%s). Maybe load the page again."
              .formatted(echo(stamp.session().value()), open.session().id()));
    }
    if (stamp.atMillis() < 0 || stamp.atMillis() > LAST_MILLIS) {
      return refused(
          "The time (%s) must be in milliseconds since 1970. Maybe the phone's clock is wrong."
              .formatted(stamp.atMillis()));
    }
    if (stamp.by().length() > LONGEST_BY) {
      return refused(
          "The phone's name has %s characters; at most %s are allowed. Maybe load the page again."
              .formatted(stamp.by().length(), LONGEST_BY));
    }
    return Optional.empty();
  }

  private Optional<String> contentRefusal(CourtEvent event) {
    if (event instanceof RallyPlayed played) {
      return gameRefusal(played.game()).or(() -> bonusRefusal(played));
    } else if (event instanceof FirstServerNamed named) {
      return gameRefusal(named.game());
    } else if (event instanceof TimeCalled called) {
      return gameRefusal(called.game());
    } else if (event instanceof FinalScoreGiven given) {
      return gameRefusal(given.game()).or(() -> scoreRefusal(given));
    } else if (event instanceof BlockStarted started) {
      return blockRefusal(started.block());
    } else if (event instanceof BlockEnded ended) {
      return blockRefusal(ended.block());
    } else if (event instanceof YardstickCounted counted) {
      return blockRefusal(counted.block()).or(() -> countRefusal(counted));
    } else if (event instanceof EffortRated rated) {
      return playerRefusal(rated.player());
    } else if (event instanceof NoteWritten note) {
      return note.block()
          .flatMap(this::blockRefusal)
          .or(() -> note.player().flatMap(this::playerRefusal))
          .or(() -> note.instead().flatMap(old -> nameRefusal("The note to correct", old)));
    } else if (event instanceof BlockLimited limited) {
      return blockRefusal(limited.block()).or(() -> outsideRefusal(limited));
    } else if (event instanceof Undone undo) {
      // What it takes back may still be on its way: messages can overtake each other.
      return nameRefusal("The event to take back", undo.undone());
    }
    return Optional.empty();
  }

  private static Optional<String> nameRefusal(String what, EventId named) {
    return ID.matcher(named.value()).matches()
        ? Optional.empty()
        : refused(
            "%s (%s) must be named by a UUID in lower case. Maybe load the page again."
                .formatted(what, echo(named.value())));
  }

  private Optional<String> outsideRefusal(BlockLimited limited) {
    PlannedBlock block = open.plan().block(limited.block()).orElseThrow();
    Set<GameId> own = new HashSet<>();
    block.games().forEach(game -> own.add(game.id()));
    return limited.without().stream()
        .filter(game -> !own.contains(game))
        .findFirst()
        .flatMap(
            game ->
                refused(
                    "The game (%s) must be one of %s. Maybe load the page again."
                        .formatted(echo(game.value()), open.title(block))));
  }

  private Optional<String> gameRefusal(GameId game) {
    return open.plan().game(game).isPresent()
        ? Optional.empty()
        : refused(
            ("The game (%s) must be one of this session's plan. Maybe the plan was changed since;"
                    + " load the page again.")
                .formatted(echo(game.value())));
  }

  private Optional<String> blockRefusal(BlockId block) {
    return open.plan().block(block).isPresent()
        ? Optional.empty()
        : refused(
            ("The block (%s) must be one of this session's plan. Maybe the plan was changed since;"
                    + " load the page again.")
                .formatted(echo(block.value())));
  }

  private Optional<String> playerRefusal(rallywright.engine.club.PlayerId player) {
    return open.has(player)
        ? Optional.empty()
        : refused(
            ("The player (%s) must take part in this session. Maybe the plan was changed since;"
                    + " load the page again.")
                .formatted(echo(player.value())));
  }

  private Optional<String> bonusRefusal(RallyPlayed played) {
    if (played.rally().bonus() == Rally.Bonus.NONE) {
      return Optional.empty();
    }
    PlannedBlock block = blockOf(played.game());
    var place = open.plan().game(played.game()).orElseThrow().place().lane().direction();
    boolean allowed =
        open.drill(block)
            .flatMap(drill -> drill.scored())
            .map(scored -> scored.roundThePostIn(place) == RoundThePost.LEGAL_ON_FULL_COURT)
            .orElse(false);
    return allowed
        ? Optional.empty()
        : refused(
            ("The ending (round the post) must be allowed by the drill, and %s does not. Maybe the"
                    + " rally was won in the usual way.")
                .formatted(open.title(block)));
  }

  private Optional<String> scoreRefusal(FinalScoreGiven given) {
    var game = open.plan().game(given.game()).orElseThrow();
    GameState.Clock clock =
        given.finish() == Finish.TIME_CALLED
            ? GameState.Clock.TIME_CALLED
            : GameState.Clock.RUNNING;
    return FinalScoreCheck.of(open.formatOf(blockOf(given.game()), game))
        .refusalOf(given.score(), clock)
        .map(refusal -> open.named(game, refusal.sentence()));
  }

  private Optional<String> countRefusal(YardstickCounted counted) {
    PlannedBlock block = open.plan().block(counted.block()).orElseThrow();
    if (block.kind() != PlannedBlock.Kind.YARDSTICK) {
      return refused(
          "The block (%s) must be a yardstick to be counted. Maybe it is a game: give its score."
              .formatted(open.title(block)));
    }
    int most = open.yardstick(block).map(test -> test.balls()).orElse(counted.balls());
    if (counted.balls() > most) {
      return refused(
          ("The number of balls (%s) must be at most %s, as the yardstick has. Maybe a ball was"
                  + " counted twice.")
              .formatted(counted.balls(), most));
    }
    return playerRefusal(counted.player());
  }

  private PlannedBlock blockOf(GameId game) {
    return open.plan().blocks().stream()
        .filter(block -> block.games().stream().anyMatch(each -> each.id().equals(game)))
        .findFirst()
        .orElseThrow();
  }

  private static Optional<String> refused(String sentence) {
    return Optional.of(sentence);
  }

  private static String echo(String seen) {
    return seen.length() <= LONGEST_ECHO ? seen : seen.substring(0, LONGEST_ECHO) + "…";
  }
}
