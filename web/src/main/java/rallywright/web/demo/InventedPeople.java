package rallywright.web.demo;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Group;
import rallywright.engine.club.GroupId;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Level;
import rallywright.engine.club.Limit;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.club.Venue;
import rallywright.engine.club.VenueId;
import rallywright.engine.simulation.SeededIds;

/** The demo's people, groups and courts; all of them are made up, and so is everything noted. */
record InventedPeople(List<Player> players, List<Group> groups, Venue venue) {

  private static final int FIRST_GROUP = 6;

  private record Sketch(String name, double level, Hand hand, Set<Limit> limits, String notes) {}

  private static final String JUNIOR = "Tavi Quenlow";

  private static final List<Sketch> SKETCHES =
      List.of(
          new Sketch("Ludo Ferrenby", 4.5, Hand.RIGHT, Set.of(), "Invented. Likes to attack."),
          new Sketch("Maris Okhelund", 4.0, Hand.LEFT, Set.of(), "Invented. Steady hands."),
          new Sketch("Bexa Tornwell", 4.0, Hand.RIGHT, Set.of(), ""),
          new Sketch("Oriel Vantresk", 4.0, Hand.RIGHT, Set.of(), "Invented. Works on drops."),
          new Sketch("Hanno Pelligrave", 3.5, Hand.RIGHT, Set.of(), ""),
          new Sketch("Sunniva Darlmore", 3.5, Hand.BOTH, Set.of(), "Invented. Plays both hands."),
          new Sketch("Corvin Asheldon", 3.5, Hand.RIGHT, Set.of(Limit.NO_OVERHEADS), "Invented."),
          new Sketch("Wilmet Jorrance", 3.5, Hand.RIGHT, Set.of(), ""),
          new Sketch("Pim Castellorn", 3.0, Hand.LEFT, Set.of(), "Invented. New to the kitchen."),
          new Sketch("Edda Brackmoor", 3.0, Hand.RIGHT, Set.of(Limit.NO_RUNNING_BACK), "Invented."),
          new Sketch("Rufin Solwether", 2.5, Hand.RIGHT, Set.of(), ""),
          new Sketch(JUNIOR, 2.5, Hand.RIGHT, Set.of(), "Invented. Junior."));

  static InventedPeople with(SeededIds ids) {
    List<Player> players = new ArrayList<>();
    for (Sketch each : SKETCHES) {
      AgeGroup age = each.name().equals(JUNIOR) ? AgeGroup.JUNIOR : AgeGroup.ADULT;
      players.add(
          new Player(
              new PlayerId(ids.next()),
              each.name(),
              new Level(each.level()),
              each.hand(),
              each.limits(),
              each.notes(),
              age,
              Standing.ACTIVE));
    }
    List<Group> groups =
        List.of(
            group(ids, "Tuesday evening", players.subList(0, FIRST_GROUP + 2)),
            group(ids, "Friday mix", players.subList(FIRST_GROUP - 2, players.size())));
    Venue venue =
        new Venue(
            new VenueId(ids.next()),
            "Heronmere Hall (invented)",
            3,
            Venue.Setting.OUTDOOR,
            "outdoor ball",
            "acrylic",
            120);
    return new InventedPeople(players, groups, venue);
  }

  private static Group group(SeededIds ids, String name, List<Player> members) {
    Set<PlayerId> who = new LinkedHashSet<>();
    members.forEach(player -> who.add(player.id()));
    return new Group(new GroupId(ids.next()), name, who);
  }
}
