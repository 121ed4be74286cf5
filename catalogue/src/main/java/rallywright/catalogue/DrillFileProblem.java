package rallywright.catalogue;

import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;

/**
 * A drill file that cannot be taken as it is: where, what was seen, what is allowed, what to try.
 */
public final class DrillFileProblem extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String file;
  private final int line;
  private final int column;
  private final String sentence;

  private DrillFileProblem(String file, int line, int column, String sentence) {
    super("%s, line %d, column %d: %s".formatted(file, line, column, sentence));
    this.file = file;
    this.line = line;
    this.column = column;
    this.sentence = sentence;
  }

  static DrillFileProblem at(String file, Optional<Mark> mark, String sentence) {
    return new DrillFileProblem(
        file,
        mark.map(place -> place.getLine() + 1).orElse(1),
        mark.map(place -> place.getColumn() + 1).orElse(1),
        sentence);
  }

  /** The name of the file. */
  public String file() {
    return file;
  }

  /** The line, from 1. */
  public int line() {
    return line;
  }

  /** The column, from 1. */
  public int column() {
    return column;
  }

  /** What is wrong, without the place. */
  public String sentence() {
    return sentence;
  }
}
