package rallywright.web.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.simulation.SeededIds;

class TruthPageIT {

  private static final Path HOME = Path.of("..");
  private static final Pattern SHARE = Pattern.compile("([0-9]+) of ([0-9]+) [|]");

  @TempDir private Path folder;

  @Test
  void command_writesALineForEveryPlayer_withCountsThatCanBe() throws IOException {
    Path file = folder.resolve("truth.md");
    TruthPage.main(new String[] {file.toString(), "0"});
    String text = Files.readString(file);
    InventedPeople.with(SeededIds.of(new SplittableRandom(DemoClub.SEED)))
        .players()
        .forEach(player -> assertThat(text).contains("\n| " + player.name() + " | "));
    assertThat(SHARE.matcher(text).results().toList())
        .hasSizeGreaterThan(40)
        .allSatisfy(TruthPageIT::isAShare);
    // A reading whose intervals say nothing true would fall far below 80 of 100; one club varies.
    MatchResult all = total(text);
    assertThat(100.0 * Integer.parseInt(all.group(1)) / Integer.parseInt(all.group(2)))
        .isBetween(60.0, 98.0);
  }

  @Test
  void document_wasWrittenByTheCommandThatItNames() throws IOException {
    String document = Files.readString(HOME.resolve("docs/demo-truth.md"));
    assertThat(document).contains("benchmarks/demo-truth").contains("## Further clubs");
    String head = document.substring(0, document.indexOf("| Ludo"));
    assertThat(TruthPage.text(0)).startsWith(head);
    Path script = HOME.resolve("benchmarks/demo-truth");
    assertThat(script).isExecutable();
    assertThat(Files.readString(script)).contains(TruthPage.class.getName());
  }

  private static void isAShare(MatchResult share) {
    assertThat(Integer.parseInt(share.group(1))).isBetween(0, Integer.parseInt(share.group(2)));
  }

  private static MatchResult total(String text) {
    return SHARE
        .matcher(text.substring(text.indexOf("**All twelve**")))
        .results()
        .findFirst()
        .orElseThrow();
  }
}
