package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * All that is known of one group: who is in it, and every piece of evidence in which one of them
 * took part, also against or beside guests.
 *
 * @param club the club
 * @param players numbers of the players of the group, ascending
 * @param evidence the evidence, counted together where possible
 * @param weeks weeks for which estimates are wanted
 */
record GroupRecord(Club club, List<Integer> players, List<Evidence> evidence, Set<Integer> weeks) {

  /** Whether it says the same as another, so that what followed from that stays valid. */
  boolean saysTheSameAs(GroupRecord other) {
    return players.equals(other.players)
        && weeks.equals(other.weeks)
        && evidence.equals(other.evidence)
        && players.stream()
            .allMatch(
                player -> club.entrants().get(player).equals(other.club.entrants().get(player)));
  }

  /** This record with more evidence, counted together. */
  GroupRecord plus(List<Evidence> more) {
    List<Evidence> all = new ArrayList<>(evidence);
    all.addAll(more);
    return new GroupRecord(club, players, Collapsed.of(all), weeks);
  }
}
