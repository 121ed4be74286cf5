package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.SelectOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.club.Group;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Limit;
import rallywright.engine.club.Player;
import rallywright.engine.club.Standing;
import rallywright.engine.club.Venue;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/** The people of a club and the places where it plays, by the forms of the pages. */
class PeopleIT {

  private static final Pattern PLAN_PAGE = Pattern.compile(".*/sessions/([^/]+)/plan");

  @TempDir private Path folder;
  private Path data;
  private StartedProgram program;
  private Browsers browsers;
  private Page page;

  @BeforeEach
  void start() {
    data = folder.resolve("club");
    program = StartedProgram.serve(data);
    browsers = new Browsers();
    page = browsers.laptop().newPage();
    page.navigate(program.signInAddress());
    page.waitForURL(program.address() + "/");
  }

  @AfterEach
  void stop() {
    browsers.close();
    program.close();
  }

  @Test
  void player_addedEditedArchivedAndRestored_isStoredAsTyped() {
    open("/players/new");
    page.fill("#name", "Ada Quell");
    page.fill("#level", "3.5");
    page.selectOption("#hand", "LEFT");
    page.check("[name=limits][value=NO_OVERHEADS]");
    page.fill("#notes", "Likes the left side.");
    press("Add with all this");
    assertThat(only().name()).isEqualTo("Ada Quell");
    assertThat(only().hand()).isEqualTo(Hand.LEFT);
    assertThat(only().limits()).isEqualTo(Set.of(Limit.NO_OVERHEADS));
    assertThat(only().notes()).isEqualTo("Likes the left side.");

    page.locator("a.row-link").click();
    page.fill("#name", "Ada Quellen");
    page.fill("#level", "4");
    press("Keep");
    assertThat(page.locator("main").textContent()).contains("Ada Quellen was changed.");
    assertThat(only().name()).isEqualTo("Ada Quellen");
    assertThat(only().level()).hasFieldOrPropertyWithValue("value", 4.0);

    page.locator("a.row-link").click();
    press("Archive");
    assertThat(page.locator("a.row-link").count()).isZero();
    assertThat(only().standing()).isEqualTo(Standing.ARCHIVED);
    open("/sessions/new");
    assertThat(page.locator("main").textContent()).doesNotContain("Ada");
    open("/players?archived");
    page.locator("a.row-link").click();
    press("Back on the list");
    assertThat(only().standing()).isEqualTo(Standing.ACTIVE);
    assertThat(page.locator("a.row-link").textContent()).isEqualTo("Ada Quellen");
  }

  @Test
  void player_inSeveralGroups_isFoundByEachOfThem() {
    addPlayers("Ada Quell", "Bela Rook");
    for (String name : List.of("Tuesday", "Friday")) {
      open("/players/groups");
      page.fill("#name", name);
      press("Make the group");
      page.locator("#who label.choice", new Page.LocatorOptions().setHasText("Ada Quell")).click();
      press("Keep");
    }
    open("/players");
    assertThat(page.locator("tr", new Page.LocatorOptions().setHasText("Ada")).textContent())
        .contains("Tuesday", "Friday");
    page.locator(".filter a:text('Friday')").click();
    assertThat(page.locator("a.row-link").allTextContents()).containsExactly("Ada Quell");
    open("/progress");
    page.locator(".filter a:text('Tuesday')").click();
    assertThat(page.locator("a.row-link").allTextContents()).containsExactly("Ada Quell");

    open("/players/groups");
    page.locator("a:text('Friday')").click();
    press("Delete the group");
    try (ClubStore store = stored()) {
      assertThat(store.groups().all()).extracting(Group::name).containsExactly("Tuesday");
      assertThat(store.players().all()).hasSize(2);
    }
  }

  @Test
  void venue_addedChangedAndDeleted_isStoredInMetres() {
    open("/settings");
    page.check("[name=units][value=FEET]");
    press("Keep the units");
    open("/players/venues/new");
    page.fill("#name", "Hall by the mill");
    page.fill("#courts", "3");
    page.check("[name=setting][value=INDOOR]");
    page.fill("#ball", "indoor ball");
    page.fill("#altitude", "1000");
    press("Keep");
    assertThat(venues())
        .singleElement()
        .satisfies(
            venue -> {
              assertThat(venue.courts()).isEqualTo(3);
              assertThat(venue.setting()).isEqualTo(Venue.Setting.INDOOR);
              // 1 ft = 0.3048 m exactly (international foot)
              assertThat(venue.altitudeMetres()).isBetween(304.7, 304.9);
            });
    page.locator("a:text('Hall by the mill')").click();
    assertThat(page.inputValue("#altitude")).isEqualTo("1000");
    page.fill("#courts", "2");
    press("Keep");
    assertThat(venues()).extracting(Venue::courts).containsExactly(2);
    page.locator("a:text('Hall by the mill')").click();
    press("Delete the venue");
    assertThat(venues()).isEmpty();
  }

  @Test
  void list_pastedOrSentAsFile_isShownBeforeItIsStored() throws IOException {
    open("/players/import");
    page.fill("#sheet", "Ada Quell, 3.5, left, no overheads\nBela Rook, 4.0\n");
    press("Look at it");
    assertThat(page.locator("table").textContent()).contains("Ada Quell", "3.5", "left", "4.0");
    assertThat(players()).isEmpty();
    press("Store these 2 players");
    assertThat(players()).extracting(Player::name).containsExactly("Ada Quell", "Bela Rook");

    Path file =
        Files.writeString(
            folder.resolve("players.csv"),
            "name;notes;level\nCleo Tärn;\"quick, on the left\";3.0\nDov Umber;;2.5\n");
    open("/players/import");
    page.setInputFiles("#file", file);
    press("Look at it");
    assertThat(page.locator("table").textContent()).contains("Cleo Tärn", "quick, on the left");
    assertThat(players()).hasSize(2);
    press("Store these 2 players");
    assertThat(players()).hasSize(4);
    assertThat(players().get(2).notes()).isEqualTo("quick, on the left");

    open("/players/import");
    page.fill("#sheet", "Edda Vole, 3.5\nFinn Wold, quite good\n");
    press("Look at it");
    assertThat(page.locator("[role=alert]").first().textContent()).contains("Line 2");
    assertThat(players()).hasSize(4);
  }

  @Test
  void walkIn_scoredThenMerged_givesTheListedPlayerTheScoresAndTheAttendance() {
    addPlayers("Ada Quell", "Bela Rook", "Zora Pike");
    open("/sessions/new");
    for (String name : List.of("Ada Quell", "Bela Rook")) {
      page.locator("#who label.choice", new Page.LocatorOptions().setHasText(name)).click();
    }
    page.fill("#walkIns", "Zed");
    page.fill("#minutes", "60");
    press("Make the plan");
    page.waitForURL(PLAN_PAGE);
    Matcher found = PLAN_PAGE.matcher(page.url());
    assertThat(found.matches()).isTrue();
    typeInEverything(found.group(1));
    assertThat(came("Zed")).isEqualTo("1");
    assertThat(came("Zora Pike")).isEqualTo("0");
    open("/players");
    page.locator("a:text('Who is Zed?')").click();
    page.selectOption("#into", new SelectOption().setLabel("Zora Pike"));
    press("Merge");

    assertThat(players())
        .extracting(Player::name)
        .containsExactlyInAnyOrder("Ada Quell", "Bela Rook", "Zora Pike");
    assertThat(came("Zora Pike")).isEqualTo("1");
    open("/progress");
    page.locator("a.row-link", new Page.LocatorOptions().setHasText("Zora Pike")).click();
    assertThat(page.locator("table").last().textContent()).contains("against ", "5–");
    open("/progress");
    page.locator("a.row-link", new Page.LocatorOptions().setHasText("Ada Quell")).click();
    assertThat(page.locator("table").last().textContent())
        .contains("against Zora")
        .doesNotContain("Zed");
  }

  private void addPlayers(String... names) {
    for (String name : names) {
      open("/players/new");
      page.fill("#name", name);
      press("Add");
    }
  }

  /**
   * Types every game in from paper: five to four, by which drill games and half-court games end.
   */
  private void typeInEverything(String session) {
    open("/sessions/" + session + "/from-paper");
    for (Locator game : page.locator(".paper-game").all()) {
      game.locator("input[name^=a-]").fill("5");
      game.locator("input[name^=b-]").fill("4");
    }
    press("Store the scores");
    page.waitForURL("**/sessions/" + session);
  }

  private String came(String name) {
    open("/players");
    return page.locator("tr", new Page.LocatorOptions().setHasText(name))
        .locator("td")
        .last()
        .textContent();
  }

  private void open(String path) {
    page.navigate(program.address() + path);
  }

  private void press(String words) {
    Locator button =
        page.locator("main")
            .getByRole(
                AriaRole.BUTTON, new Locator.GetByRoleOptions().setName(words).setExact(true));
    Browsers.toNextPage(page, () -> button.first().click());
  }

  private ClubStore stored() {
    return ClubStore.open(StoreAddress.file(data));
  }

  private List<Player> players() {
    try (ClubStore store = stored()) {
      return store.players().all();
    }
  }

  private List<Venue> venues() {
    try (ClubStore store = stored()) {
      return store.venues().all();
    }
  }

  private Player only() {
    assertThat(players()).hasSize(1);
    return players().get(0);
  }
}
