package rallywright.catalogue;

import java.util.List;
import java.util.Optional;
import rallywright.engine.court.Direction;
import rallywright.engine.court.HalfArea;
import rallywright.engine.court.Spot;
import rallywright.engine.drill.Advice;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.SecondsPrior;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.quantity.Source;

/** Reads a yardstick from its file. */
final class YardstickReader {

  private static final List<String> REQUIRED =
      List.of(
          "key",
          "name",
          "skill",
          "balls",
          "hit",
          "set-up",
          "direction",
          "player",
          "target",
          "difficulty",
          "seconds-per-ball",
          "equipment",
          "cues",
          "mistakes",
          "safety");

  private YardstickReader() {}

  static Yardstick read(Entry file) {
    Block block = Block.of(file, REQUIRED, List.of("feeder"));
    DrillKey key = block.get("key").make(() -> new DrillKey(block.get("key").text()));
    Skill skill = block.get("skill").choice(Skill.class);
    int balls = block.get("balls").whole();
    Yardstick.OnCourt court = onCourt(block);
    Yardstick.Difficulty difficulty = difficulty(block.get("difficulty"));
    SecondsPrior seconds = DrillReader.seconds(block, "seconds-per-ball");
    Advice advice = DrillReader.advice(block);
    return file.make(
        () ->
            new Yardstick(
                key,
                block.get("name").text(),
                skill,
                balls,
                block.get("hit").text(),
                block.get("set-up").text(),
                court,
                difficulty,
                seconds,
                advice));
  }

  private static Yardstick.OnCourt onCourt(Block block) {
    Direction direction = block.get("direction").choice(Direction.class);
    Spot player = SideReader.spot(block.get("player"));
    Optional<Spot> feeder = block.find("feeder").map(SideReader::spot);
    HalfArea target = SideReader.area(block.get("target"));
    return new Yardstick.OnCourt(direction, player, feeder, target);
  }

  private static Yardstick.Difficulty difficulty(Entry entry) {
    Block block = Block.of(entry, List.of("logit", "sd", "source"), List.of());
    return entry.make(
        () ->
            new Yardstick.Difficulty(
                block.get("logit").number(),
                block.get("sd").number(),
                new Source(block.get("source").text())));
  }
}
