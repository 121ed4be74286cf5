package rallywright.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.nodes.Node;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Yardstick;

/**
 * The drills and yardsticks that a session can use, in the order of a session: warm-ups, then from
 * the line back to the baseline, then full points.
 *
 * <p>{@link #shipped()} are those that come with the program; {@link #read} takes a coach's own.
 */
public final class Catalogue {

  /** The largest file that is read, in characters: many times the longest that ships. */
  private static final int LARGEST = 50_000;

  private static final String FOLDER = "/rallywright/drills/";

  private final List<Drill> drills;
  private final List<Yardstick> yardsticks;

  private Catalogue(List<Drill> drills, List<Yardstick> yardsticks) {
    this.drills =
        drills.stream()
            .sorted(Comparator.comparing(Drill::progression).thenComparing(Drill::kind))
            .toList();
    this.yardsticks = List.copyOf(yardsticks);
    Set<DrillKey> keys = new HashSet<>();
    drills.forEach(drill -> requireNew(drill.key(), keys));
    yardsticks.forEach(yardstick -> requireNew(yardstick.key(), keys));
  }

  /** Drills and yardsticks whose keys all differ. */
  public static Catalogue of(List<Drill> drills, List<Yardstick> yardsticks) {
    return new Catalogue(drills, yardsticks);
  }

  /** What comes with the program. */
  public static Catalogue shipped() {
    return Shipped.CATALOGUE;
  }

  /**
   * Reads a drill, for example a coach's own.
   *
   * @param name the name of the file, for messages
   * @param text its text
   * @throws DrillFileProblem with the place if the text is not a drill
   */
  public static Drill read(String name, String text) {
    return DrillReader.read(new Entry(name, "drill", compose(name, text)));
  }

  /**
   * Reads a yardstick.
   *
   * @param name the name of the file, for messages
   * @param text its text
   * @throws DrillFileProblem with the place if the text is not a yardstick
   */
  public static Yardstick readYardstick(String name, String text) {
    return YardstickReader.read(new Entry(name, "yardstick", compose(name, text)));
  }

  /** The drills in the order of a session. */
  public List<Drill> drills() {
    return drills;
  }

  /** The yardsticks. */
  public List<Yardstick> yardsticks() {
    return yardsticks;
  }

  /** The drill of this key. */
  public Optional<Drill> drill(DrillKey key) {
    return drills.stream().filter(drill -> drill.key().equals(key)).findFirst();
  }

  /** The yardstick of this key. */
  public Optional<Yardstick> yardstick(DrillKey key) {
    return yardsticks.stream().filter(yardstick -> yardstick.key().equals(key)).findFirst();
  }

  /** This catalogue and one drill more; a drill of the same key is replaced. */
  public Catalogue with(Drill drill) {
    List<Drill> others = new ArrayList<>(drills);
    others.removeIf(each -> each.key().equals(drill.key()));
    others.add(drill);
    return new Catalogue(others, yardsticks);
  }

  private static void requireNew(DrillKey key, Set<DrillKey> seen) {
    if (!seen.add(key)) {
      throw new IllegalArgumentException(
          "The key \"%s\" is given twice but must name one drill. Maybe add a word to one of them."
              .formatted(key));
    }
  }

  private static Node compose(String name, String text) {
    if (text.length() > LARGEST) {
      throw DrillFileProblem.at(
          name,
          Optional.empty(),
          "The file has %d characters, but at most %d are allowed. Maybe it is not a drill file."
              .formatted(text.length(), LARGEST));
    }
    LoadSettings settings = LoadSettings.builder().setLabel(name).setUseMarks(true).build();
    try {
      return new Compose(settings)
          .composeString(text)
          .orElseThrow(
              () ->
                  DrillFileProblem.at(
                      name,
                      Optional.empty(),
                      "The file is empty, but must describe a drill. Maybe it was not saved."));
    } catch (MarkedYamlEngineException broken) {
      throw DrillFileProblem.at(
          name,
          broken.getProblemMark(),
          "This is not YAML: %s. Maybe quotes around the text help, or the indent is off."
              .formatted(broken.getProblem()));
    } catch (ReaderException broken) {
      throw DrillFileProblem.at(
          name,
          Optional.empty(),
          "The file has a character that no text has (position %d). Maybe it is not a text file."
              .formatted(broken.getPosition()));
    }
  }

  /** Read once, when first asked for. */
  private static final class Shipped {

    private static final Catalogue CATALOGUE = load();

    private static Catalogue load() {
      List<Drill> drills = new ArrayList<>();
      for (String file : text("drills.txt").lines().toList()) {
        drills.add(read(file, text(file)));
      }
      List<Yardstick> yardsticks = new ArrayList<>();
      for (String file : text("yardsticks.txt").lines().toList()) {
        yardsticks.add(readYardstick(file, text(file)));
      }
      return of(drills, yardsticks);
    }

    private static String text(String file) {
      try (InputStream in = Catalogue.class.getResourceAsStream(FOLDER + file)) {
        if (in == null) {
          throw new IllegalStateException("The program lacks its file " + FOLDER + file + ".");
        }
        return new String(in.readAllBytes(), StandardCharsets.UTF_8);
      } catch (IOException problem) {
        throw new UncheckedIOException(problem);
      }
    }
  }
}
