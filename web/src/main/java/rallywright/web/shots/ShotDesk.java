package rallywright.web.shots;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import rallywright.engine.aim.LineTable;
import rallywright.engine.aim.ShotAnswer;
import rallywright.engine.aim.ShotSetting;
import rallywright.engine.aim.ShotStudy;
import rallywright.engine.aim.UsualShot;
import rallywright.web.page.Later;

/**
 * Works out answers and keeps the latest full ones: they take some tenths of a second, and the
 * page, its pictures and the card ask for the same.
 */
@Component
final class ShotDesk {

  private static final int KEPT = 100;

  /** After the first pages and the first sheet. */
  private static final Duration FIRST_PAGES = Duration.ofSeconds(12);

  private final Later later;
  private final Map<ShotSetting, ShotAnswer> answers = latest();
  private final Map<Double, List<LineTable>> tables = latest();

  ShotDesk(Later later) {
    this.later = later;
  }

  /** What most coaches look at first is worked out beside the first pages. */
  @EventListener(ApplicationReadyEvent.class)
  void readAhead() {
    ShotSetting first = UsualShot.DROP_STRAIGHT.usual();
    later.run(
        "first shots",
        FIRST_PAGES,
        () -> {
          full(first);
          lines(first.level());
        });
  }

  ShotAnswer live(ShotSetting setting) {
    return ShotStudy.live(setting);
  }

  ShotAnswer full(ShotSetting setting) {
    ShotAnswer kept = kept(answers, setting);
    return kept == null ? keep(answers, setting, ShotStudy.full(setting)) : kept;
  }

  /** Straight against cross-court for a player of a level on a calm day. */
  List<LineTable> lines(double level) {
    List<LineTable> kept = kept(tables, level);
    return kept == null
        ? keep(
            tables,
            level,
            LineTable.SHOTS.stream()
                .map(shot -> LineTable.of(shot, ShotSetting.Day.CALM, level))
                .toList())
        : kept;
  }

  private static <K, V> Map<K, V> latest() {
    return new LinkedHashMap<>(KEPT, 0.75f, true) {
      private static final long serialVersionUID = 1;

      @Override
      protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
        return size() > KEPT;
      }
    };
  }

  private static <K, V> @Nullable V kept(Map<K, V> map, K key) {
    synchronized (map) {
      return map.get(key);
    }
  }

  private static <K, V> V keep(Map<K, V> map, K key, V value) {
    synchronized (map) {
      map.put(key, value);
    }
    return value;
  }
}
