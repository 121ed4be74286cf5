package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.club.Player;
import rallywright.engine.session.Session;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/** What leaves a club with ten weeks of history: an export that is taken elsewhere, and people. */
class LeavingIT {

  private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)");
  private static final int MOST_PAGES = 800;

  private static Path folder;
  private static StartedProgram program;
  private static Browsers browsers;
  private static BrowserContext coach;

  @BeforeAll
  static void start(@TempDir Path temporary) {
    folder = temporary;
    program = StartedProgram.demo(data());
    browsers = new Browsers();
    coach = signedIn(program);
  }

  @AfterAll
  static void stop() {
    browsers.close();
    program.close();
  }

  @Test
  void export_importedIntoAFreshClub_showsTheSameProgress() throws IOException {
    Path zip = Files.write(folder.resolve("export.zip"), export());
    Path fresh = folder.resolve("fresh");
    FinishedProgram imported =
        FinishedProgram.run(List.of("import", zip.toString(), "--data", fresh.toString()), "");
    assertThat(imported.code()).as(imported.err()).isZero();
    try (StartedProgram other = StartedProgram.serve(fresh)) {
      BrowserContext there = signedIn(other);
      List<String> addresses = List.of("/progress", "/progress/" + player("Oriel Vantresk").id());
      for (String address : addresses) {
        String here = shown(coach, program, address);
        assertThat(here).contains("Oriel Vantresk");
        assertThat(shown(there, other, address)).isEqualTo(here);
      }
      there.close();
    }
  }

  @Test
  void peopleErased_gamesKeptOrNot_areNamedNowhere() throws IOException {
    Player kept = player("Rufin Solwether");
    Player removed = player("Edda Brackmoor");
    String opponents = "against Edda";
    assertThat(named(text("/progress"), "Rufin")).isTrue();
    assertThat(players()).anyMatch(each -> text("/progress/" + each.id()).contains(opponents));
    erase(kept, "KEEP");
    erase(removed, "REMOVE");

    Map<String, String> pages = crawled();
    checkNowhere(pages, "Rufin", "Solwether", "Edda", "Brackmoor");
    assertThat(pages.values()).anyMatch(text -> text.contains("against a former player"));
    try (ClubStore store = ClubStore.open(StoreAddress.file(data()))) {
      assertThat(store.players().find(removed.id())).isEmpty();
    }
    Map<String, String> files = unzipped(export());
    assertThat(files.remove("data/forgotten.jsonl"))
        .as("the mark by which an older copy does not bring the person back")
        .contains(removed.id().value());
    assertThat(files.values()).noneMatch(text -> text.contains(removed.id().value()));
  }

  private static void erase(Player player, String games) {
    Page page = coach.newPage();
    page.navigate(program.address() + "/players/" + player.id() + "/erase");
    assertThat(page.locator("main").textContent()).contains("backups and exports made earlier");
    page.check("[name=games][value=" + games + "]");
    page.fill("#confirm", player.name());
    Browsers.toNextPage(page, () -> page.locator("button.now").click());
    assertThat(page.locator("main").textContent()).contains("The person was erased for good.");
    page.close();
  }

  /** On every page that links lead to, on every court sheet, and in the export. */
  private static void checkNowhere(Map<String, String> crawled, String... names)
      throws IOException {
    Map<String, String> pages = new LinkedHashMap<>(crawled);
    assertThat(pages).hasSizeGreaterThan(40);
    pages.putAll(sheets());
    pages.putAll(unzipped(export()));
    for (String name : names) {
      assertThat(pages).allSatisfy((where, text) -> assertThat(named(text, name)).isFalse());
    }
  }

  private static boolean named(String text, String name) {
    return Pattern.compile("\\b" + name + "\\b", Pattern.CASE_INSENSITIVE).matcher(text).find();
  }

  private static String text(String address) {
    APIResponse answer = coach.request().get(program.address() + address);
    assertThat(answer.status()).as(address).isEqualTo(200);
    return answer.text();
  }

  /** Every page and table of the coach that a link leads to, by its address. */
  private static Map<String, String> crawled() {
    Map<String, String> pages = new LinkedHashMap<>();
    Set<String> seen = new LinkedHashSet<>(List.of("/"));
    Deque<String> open = new ArrayDeque<>(seen);
    while (!open.isEmpty()) {
      String address = open.removeFirst();
      APIResponse answer = coach.request().get(program.address() + address);
      assertThat(answer.status()).as(address).isEqualTo(200);
      String type = String.valueOf(answer.headers().get("content-type"));
      if (type.startsWith("text/")) {
        pages.put(address, answer.text());
      }
      if (type.startsWith("text/html")) {
        String text = answer.text();
        Matcher link = LINK.matcher(text);
        while (link.find()) {
          String next = link.group(1).replace("&amp;", "&");
          if (isPage(next) && seen.add(next)) {
            open.add(next);
          }
        }
      }
      answer.dispose();
      assertThat(seen).hasSizeLessThan(MOST_PAGES);
    }
    return pages;
  }

  /** Downloads are looked at on their own; files of the look and answers on shots name nobody. */
  private static boolean isPage(String address) {
    return !address.startsWith("/settings/")
        && !address.matches("/shots[?/].*")
        && !address.matches("[^?]*\\.pdf(\\?.*)?")
        && !address.matches("/(css|js|fonts)/.*|.*\\.svg");
  }

  private static Map<String, String> sheets() throws IOException {
    Map<String, String> sheets = new LinkedHashMap<>();
    List<Session> sessions;
    try (ClubStore store = ClubStore.open(StoreAddress.file(data()))) {
      sessions = store.sessions().all();
    }
    for (Session session : sessions.subList(0, Math.min(4, sessions.size()))) {
      String address = "/sessions/" + session.id() + "/sheet.pdf";
      byte[] pdf = coach.request().get(program.address() + address).body();
      try (PDDocument document = Loader.loadPDF(pdf)) {
        sheets.put(address, new PDFTextStripper().getText(document));
      }
    }
    return sheets;
  }

  private static byte[] export() {
    return coach.request().get(program.address() + "/settings/export").body();
  }

  private static Map<String, String> unzipped(byte[] zip) throws IOException {
    Map<String, String> files = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        files.put(entry.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    assertThat(files).isNotEmpty();
    return files;
  }

  private static BrowserContext signedIn(StartedProgram where) {
    BrowserContext context = browsers.laptop();
    Page page = context.newPage();
    page.navigate(where.signInAddress());
    page.waitForURL(where.address() + "/");
    page.close();
    return context;
  }

  /** What a page says, without what stands around every page. */
  private static String shown(BrowserContext who, StartedProgram where, String address) {
    Page page = who.newPage();
    page.navigate(where.address() + address);
    String text = page.locator("main").innerHTML();
    page.close();
    return text;
  }

  private static Player player(String name) {
    return players().stream().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
  }

  private static List<Player> players() {
    try (ClubStore store = ClubStore.open(StoreAddress.file(data()))) {
      return store.players().all();
    }
  }

  private static Path data() {
    return folder.resolve("club");
  }
}
