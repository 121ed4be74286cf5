package rallywright.store.archive;

import java.util.List;

/** The names of the files inside an export. */
final class ArchiveFiles {

  /** Says what the archive is and which version it has. */
  static final String ABOUT = "club.json";

  static final String PLAYERS = "data/players.jsonl";
  static final String GROUPS = "data/groups.jsonl";
  static final String VENUES = "data/venues.jsonl";
  static final String SESSIONS = "data/sessions.jsonl";
  static final String TEMPLATES = "data/templates.jsonl";
  static final String EVENTS = "data/events.jsonl";
  static final String SETTINGS = "data/settings.jsonl";
  static final String DRILLS = "data/drills.jsonl";
  static final String FORGOTTEN = "data/forgotten.jsonl";
  static final String MERGED = "data/merged.jsonl";
  static final String DAYS = "data/days.jsonl";

  /** All files that are read again. */
  static final List<String> DATA =
      List.of(
          PLAYERS, GROUPS, VENUES, SESSIONS, TEMPLATES, EVENTS, SETTINGS, DRILLS, FORGOTTEN, MERGED,
          DAYS);

  /** Files that older exports do not have; they are then empty. */
  static final List<String> NEWER = List.of(DAYS);

  /** The folder of tables for spreadsheets, which are not read again. */
  static final String TABLES = "tables/";

  static final String READ_ME = "read-me.txt";

  /** The version of the archive that is written, and the newest that is read. */
  static final int VERSION = 1;

  private ArchiveFiles() {}
}
