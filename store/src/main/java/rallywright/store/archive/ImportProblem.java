package rallywright.store.archive;

/**
 * One place in a file that cannot be taken, and why.
 *
 * @param file the file, or the name of a file inside the archive
 * @param line the line, from 1; 0 where the whole file is meant
 * @param column the field or heading, or the character of the line; empty for the whole line
 * @param reason what was seen and what is allowed
 */
public record ImportProblem(String file, int line, String column, String reason) {

  /** The problem on one line, for example {@code players.jsonl, line 3, level: …}. */
  @Override
  public String toString() {
    return file
        + (line > 0 ? ", line " + line : "")
        + (column.isEmpty() ? "" : ", " + column)
        + ": "
        + reason;
  }
}
