package rallywright.acceptance;

import java.io.IOException;

/** What takes the room for writing from a running server, and gives it back. */
interface DiskTrouble extends AutoCloseable {

  /** What is done, in words. */
  String words();

  /** From now on nothing more can be written. */
  void begin(RunningCourt court) throws IOException;

  /** The club can be written again. */
  void end(RunningCourt court) throws IOException;

  @Override
  void close();
}
