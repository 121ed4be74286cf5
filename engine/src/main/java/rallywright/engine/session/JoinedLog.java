package rallywright.engine.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rallywright.engine.session.CourtEvent.Undone;

/**
 * The events of several phones as one list.
 *
 * <p>The order is taken from two things that no clock can spoil: the order in which events reached
 * the server, and each phone's own count. The places that a phone's events took on arrival stay
 * that phone's; within them its events stand as it counted them. So late, repeated or overtaken
 * messages change nothing of what one phone saw.
 */
final class JoinedLog {

  /**
   * An event and its place.
   *
   * @param place its place in the joined list, from 0
   * @param event the event
   */
  record Entry(int place, CourtEvent event) {

    /** Whether the phone that made this one could not know of another one. */
    boolean isBlindTo(Entry other) {
      long seen = event.stamp().order().seen();
      return seen >= 0
          && other.place >= seen
          && other.place < place
          && !event.stamp().by().equals(other.event.stamp().by());
    }
  }

  private JoinedLog() {}

  /** The events that count: each id once, in the joined order, without those that were undone. */
  static List<Entry> of(List<CourtEvent> arrived) {
    Set<EventId> seen = new HashSet<>();
    List<CourtEvent> ordered =
        ordered(arrived.stream().filter(each -> seen.add(each.stamp().id())).toList());
    Set<EventId> cancelled = new HashSet<>();
    for (int i = ordered.size() - 1; i >= 0; i--) {
      if (ordered.get(i) instanceof Undone undo && !cancelled.contains(undo.stamp().id())) {
        cancelled.add(undo.undone());
      }
    }
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < ordered.size(); i++) {
      if (!cancelled.contains(ordered.get(i).stamp().id())) {
        entries.add(new Entry(i, ordered.get(i)));
      }
    }
    return entries;
  }

  private static List<CourtEvent> ordered(List<CourtEvent> arrived) {
    Map<String, List<Integer>> places = new HashMap<>();
    for (int i = 0; i < arrived.size(); i++) {
      CourtEvent.Stamp stamp = arrived.get(i).stamp();
      if (stamp.order().number() > 0) {
        places.computeIfAbsent(stamp.by(), by -> new ArrayList<>()).add(i);
      }
    }
    List<CourtEvent> ordered = new ArrayList<>(arrived);
    for (List<Integer> own : places.values()) {
      List<CourtEvent> counted =
          own.stream()
              .map(arrived::get)
              .sorted(java.util.Comparator.comparingLong(JoinedLog::number))
              .toList();
      for (int i = 0; i < own.size(); i++) {
        ordered.set(own.get(i), counted.get(i));
      }
    }
    return ordered;
  }

  private static long number(CourtEvent event) {
    return event.stamp().order().number();
  }
}
