package rallywright.cli;

import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the program. */
final class ProgramVersion implements IVersionProvider {

  /** The version of this program. */
  static final String VERSION = "0.1.0";

  @Override
  public String[] getVersion() {
    return new String[] {"rallywright " + VERSION};
  }
}
