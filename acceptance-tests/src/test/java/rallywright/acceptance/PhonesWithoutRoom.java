package rallywright.acceptance;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rallywright.store.StoreAddress;

/** The server loses its room for writing in the middle of a game, and gets it back. */
final class PhonesWithoutRoom {

  private static final String BEFORE = "AB";
  private static final String MEANWHILE = "AAB";

  private PhonesWithoutRoom() {}

  /**
   * What came of it.
   *
   * @param notice what the phone said
   * @param waiting how many entries waited on the phone, after a reload without room
   * @param storedMeanwhile how many of them the store had taken then
   * @param score the score on the phone in the end
   * @param rallies how many rallies the store held in the end
   * @param doubled how many entries were there twice
   */
  record Result(
      String notice, int waiting, int storedMeanwhile, String score, int rallies, int doubled) {

    /** Nothing lost, nothing doubled, and the phone said what was wrong. */
    boolean holds() {
      return notice.contains("stay on this phone")
          && waiting == MEANWHILE.length()
          && storedMeanwhile == 0
          && score.equals("3-2")
          && rallies == BEFORE.length() + MEANWHILE.length()
          && doubled == 0;
    }
  }

  /** Runs it with the room of a folder, which is empty. */
  static Result run(Path folder, DiskTrouble disk) throws IOException {
    try (RunningCourt court = new RunningCourt(folder)) {
      CourtPhone phone = court.phone();
      phone.start("b2");
      phone.mode("rallies");
      phone.rallies(BEFORE);
      unsent(phone, 0);
      int before = court.events().size();
      disk.begin(court);
      phone.rallies(MEANWHILE);
      phone.page.locator("[data-key=trouble]").waitFor();
      phone.page.reload();
      unsent(phone, MEANWHILE.length());
      phone.page.locator("[data-key=trouble]").waitFor();
      String notice = phone.text("[data-key=trouble]");
      String waiting = phone.page.locator(".bar-way").last().getAttribute("data-unsent");
      disk.end(court);
      int meanwhile = court.events().size() - before;
      phone.page.evaluate("dispatchEvent(new Event('online'))");
      unsent(phone, 0);
      List<String> ids = court.events().stream().map(event -> event.stamp().id().value()).toList();
      Set<String> single = new HashSet<>(ids);
      return new Result(
          notice,
          Integer.parseInt(waiting),
          meanwhile,
          phone.score(),
          court.stored("b2-t1-l1").rallies().size(),
          ids.size() - single.size());
    }
  }

  private static void unsent(CourtPhone phone, int count) {
    phone
        .page
        .locator(".bar-way[data-unsent='" + count + "']")
        .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED));
  }

  /**
   * What the program says when it is started on a folder that may not be written.
   *
   * @param folder a club
   */
  static FinishedProgram startedReadOnly(Path folder) throws IOException {
    boolean mounted =
        FullDisk.run("mount", "--bind", folder.toString(), folder.toString())
            && FullDisk.run("mount", "-o", "remount,ro,bind", folder.toString());
    File file = folder.resolve(StoreAddress.FILE_NAME).toFile();
    if (!mounted && !(folder.toFile().setWritable(false) && file.setWritable(false))) {
      throw new IOException("The folder cannot be made read-only.");
    }
    try {
      return FinishedProgram.run(List.of("serve", "--port", "0", "--data", folder.toString()), "");
    } finally {
      if (mounted) {
        FullDisk.run("umount", folder.toString());
      } else {
        file.setWritable(true);
        folder.toFile().setWritable(true);
      }
    }
  }
}
