package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Who is there when. People with the same stay form a company; a set of companies is a number whose
 * bits say who is there. Where everybody stays throughout there is one company.
 *
 * <p>For the maintainer: minutes are those of the plan's own clock, in which every block takes its
 * mean time. Who comes late is ready after a short warm-up of their own.
 */
final class Presence {

  /** So many minutes are let pass, as the clock of a plan is a mean. */
  static final double TOLERANCE_MINUTES = 0.5;

  private static final double ROUNDING = 1e-6;

  private final List<Stay> stays = new ArrayList<>();
  private final int[] companies;
  private final double[] ready;
  private final double[] until;
  private final long everybody;

  Presence(List<Attendee> attendees, SessionWish wish) {
    companies = new int[attendees.size()];
    for (int place = 0; place < companies.length; place++) {
      Stay stay = within(attendees.get(place).stay(), wish.minutes());
      if (!stays.contains(stay)) {
        stays.add(stay);
      }
      companies[place] = stays.indexOf(stay);
    }
    ready = stays.stream().mapToDouble(stay -> readyFrom(stay, wish)).toArray();
    until =
        stays.stream()
            .mapToDouble(
                stay ->
                    stay.untilMinute() == Stay.TO_THE_END
                        ? Double.POSITIVE_INFINITY
                        : stay.untilMinute())
            .toArray();
    everybody = stays.isEmpty() ? 0 : -1L >>> (Long.SIZE - stays.size());
  }

  private static Stay within(Stay stay, int minutes) {
    return stay.leavesBefore(minutes) ? stay : new Stay(stay.fromMinute(), Stay.TO_THE_END);
  }

  /** From which minute somebody can play. */
  static double readyFrom(Stay stay, SessionWish wish) {
    boolean warmsUp = stay.comesLate() && wish.warmUps() == WarmUps.FIRST;
    return stay.fromMinute() + (warmsUp ? Stay.OWN_WARM_UP_MINUTES : 0);
  }

  /** Whether nobody comes late or leaves early. */
  boolean isThroughout() {
    return stays.size() <= 1 && (stays.isEmpty() || stays.get(0).equals(Stay.THROUGHOUT));
  }

  /** The places of those who stay from the start to the end. */
  List<Integer> throughout() {
    int company = stays.indexOf(Stay.THROUGHOUT);
    return company < 0 ? List.of() : places(1L << company);
  }

  int companies() {
    return stays.size();
  }

  int companyOf(int place) {
    return companies[place];
  }

  long everybody() {
    return everybody;
  }

  /** The companies that can play all of a time, as bits. */
  long during(double fromMinute, double untilMinute) {
    long there = 0;
    for (int company = 0; company < ready.length; company++) {
      boolean all =
          ready[company] <= fromMinute + ROUNDING && until[company] >= untilMinute - ROUNDING;
      there |= all ? 1L << company : 0;
    }
    return there;
  }

  /** Whether somebody can play all of a time, give or take half a minute. */
  boolean isThere(int place, double fromMinute, double untilMinute) {
    int company = companies[place];
    return ready[company] <= fromMinute + TOLERANCE_MINUTES
        && until[company] >= untilMinute - TOLERANCE_MINUTES;
  }

  /** The places of those who are in a set of companies. */
  List<Integer> places(long there) {
    List<Integer> places = new ArrayList<>();
    for (int place = 0; place < companies.length; place++) {
      if ((there >> companies[place] & 1) != 0) {
        places.add(place);
      }
    }
    return places;
  }
}
