package rallywright.store;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.jdbc.core.simple.JdbcClient;
import rallywright.engine.club.Player;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;

/**
 * The name of a player in notes on others, on drills and on sessions: taken out when the player is
 * erased. Only sessions that the player took part in are looked at, and only the name as it is now,
 * whole or the first name alone; another spelling stays.
 */
final class NamesInNotes {

  private final Player player;
  private final Pattern name;

  private NamesInNotes(Player player, Pattern name) {
    this.player = player;
    this.name = name;
  }

  static NamesInNotes of(Player player) {
    String either = Pattern.quote(player.name().strip()) + "|" + Pattern.quote(player.firstName());
    return new NamesInNotes(
        player,
        Pattern.compile(
            "(?<![\\p{L}\\p{N}])(?:" + either + ")(?![\\p{L}\\p{N}])",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));
  }

  void takeOut(JdbcClient client) {
    Set<SessionId> joined = new HashSet<>();
    for (Session session : SessionRows.all(client)) {
      if (PlanPlayers.named(session.plan()).contains(player.id())) {
        joined.add(session.id());
      }
    }
    for (StoredEvent stored : EventRows.all(client)) {
      if (stored.event() instanceof CourtEvent.NoteWritten note
          && joined.contains(note.stamp().session())
          && name.matcher(note.text()).find()) {
        EventRows.replace(client, without(note));
      }
    }
  }

  private CourtEvent.NoteWritten without(CourtEvent.NoteWritten note) {
    String text = name.matcher(note.text()).replaceAll(Matcher.quoteReplacement(Erasure.NAMELESS));
    int longest = CourtEvent.NoteWritten.LONGEST_TEXT;
    String fitting = text.length() <= longest ? text : text.substring(0, longest - 1) + "…";
    return new CourtEvent.NoteWritten(
        note.stamp(), note.player(), note.block(), fitting, note.instead());
  }
}
