package rallywright.paper;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.club.PlayerId;
import rallywright.engine.rotation.RotationAnswer;
import rallywright.engine.rotation.RotationGame;
import rallywright.engine.rotation.RotationPlayer;
import rallywright.engine.rotation.RotationSearch;
import rallywright.engine.rotation.RotationWish;
import rallywright.engine.rotation.SearchEffort;
import rallywright.engine.rotation.SearchWatch;

/** Rotations of invented people for tests and for looking at. */
final class SampleRotations {

  private static final List<String> NAMES =
      List.of(
          "Imke",
          "Rafe",
          "Juno",
          "Bram",
          "Wren",
          "Dov",
          "Solvei",
          "Tamsin",
          "Odile",
          "Kester",
          "Mirela",
          "Anselm",
          "Ysolde",
          "Piet",
          "Rosalind",
          "Ivo",
          "Fenna",
          "Calum",
          "Noor",
          "Sixten",
          "Beatrix",
          "Leif",
          "Oona",
          "Hester",
          "Tove",
          "Joss",
          "Marit",
          "Edda",
          "Lucian",
          "Brónach",
          "Zofie",
          "Ruben",
          "Alva",
          "Corin",
          "Dagny",
          "Elio",
          "Greta",
          "Hanno",
          "Isolde",
          "Jarek");

  private SampleRotations() {}

  static RotationRequest of(RotationGame game, int players, int courts, int rounds) {
    List<RotationPlayer> all = new ArrayList<>();
    Map<PlayerId, String> names = new HashMap<>();
    for (int place = 0; place < players; place++) {
      PlayerId id = new PlayerId("p" + place);
      all.add(RotationPlayer.of(id, (place % 7 - 3) / 3.0));
      names.put(id, NAMES.get(place));
    }
    RotationWish wish = RotationWish.of(game, courts, rounds, all);
    RotationAnswer answer =
        RotationSearch.find(wish, new SearchEffort(1, 100_000), SearchWatch.PATIENT);
    return new RotationRequest(
        game.equals(RotationGame.LANES) ? "Drop game, lanes" : "Doubles rotation",
        "Tuesday 24 November 2026",
        game,
        ((RotationAnswer.Found) answer).schedule(),
        names,
        Origin.DEMO);
  }

  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of("target", "samples"));
    for (PaperSize paper : PaperSize.values()) {
      write(folder, "rotation-32", of(RotationGame.DOUBLES, 32, 8, 12), paper);
      write(folder, "rotation-13", of(RotationGame.DOUBLES, 13, 3, 8), paper);
      write(folder, "rotation-40", of(RotationGame.DOUBLES, 40, 6, 14), paper);
      write(folder, "rotation-lanes", of(RotationGame.LANES, 32, 8, 12), paper);
    }
  }

  private static void write(Path folder, String name, RotationRequest request, PaperSize paper)
      throws IOException {
    Files.write(
        folder.resolve(name + "-" + paper.name() + ".pdf"), RotationSheet.pdf(request, paper));
  }
}
