package rallywright.acceptance;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;

/**
 * A file system that turns read-only under a running server, as the kernel does with one that it
 * finds damaged: an ext4 file system in a file, aborted while the club in it is open. Every write
 * fails from then on (EROFS), and what was not forced to the disk before is lost. It becomes
 * writable as a damaged one does: the server is stopped, the file system is repaired and mounted
 * anew, the server is started again. Needs the rights of root.
 */
final class ReadOnlyDisk implements DiskTrouble {

  private static final long BYTES = 32L * 1024 * 1024;
  private static final int REPAIRED = 1;

  private final Path image;
  private final Path folder;

  private ReadOnlyDisk(Path image, Path folder) {
    this.image = image;
    this.folder = folder;
  }

  /** Whether this user may make and mount such a file system here; tried, and taken away again. */
  static boolean isPossible(Path image, Path folder) throws IOException {
    boolean mounted = isMade(image, folder);
    if (mounted) {
      new ReadOnlyDisk(image, folder).close();
    }
    return mounted;
  }

  /**
   * Puts a folder on a file system of its own.
   *
   * @param image a file that is made, outside of the folder
   * @param folder the folder
   */
  static ReadOnlyDisk mounted(Path image, Path folder) throws IOException {
    if (!isMade(image, folder)) {
      throw new IllegalStateException("A file system in a file needs the rights of root.");
    }
    return new ReadOnlyDisk(image, folder);
  }

  private static boolean isMade(Path image, Path folder) throws IOException {
    try (RandomAccessFile file = new RandomAccessFile(image.toFile(), "rw")) {
      file.setLength(0);
      file.setLength(BYTES);
    }
    return FullDisk.run("mkfs.ext4", "-q", "-F", image.toString())
        && FullDisk.run("mount", "-o", "loop", image.toString(), folder.toString());
  }

  @Override
  public String words() {
    return "a file system that turns read-only (EROFS), repaired and mounted anew";
  }

  @Override
  public void begin(RunningCourt court) {
    if (!FullDisk.run("mount", "-o", "remount,abort", folder.toString())) {
      throw new IllegalStateException("The file system could not be aborted.");
    }
  }

  @Override
  public void end(RunningCourt court) throws IOException {
    court.stop();
    close();
    int repaired = FullDisk.code("e2fsck", "-p", "-f", image.toString());
    if (repaired < 0
        || repaired > REPAIRED
        || !FullDisk.run("mount", "-o", "loop", image.toString(), folder.toString())) {
      throw new IllegalStateException("The file system could not be repaired: " + repaired);
    }
    court.startAgain();
  }

  @Override
  public void close() {
    if (!FullDisk.run("umount", folder.toString())) {
      System.out.println("The file system at " + folder + " is still mounted.");
    }
  }
}
