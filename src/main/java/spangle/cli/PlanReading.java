package spangle.cli;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import spangle.plan.json.PlanFileException;

/** Reads what a command needs of a plan, or ends it with a sentence that says why that fails. */
final class PlanReading {
  private PlanReading() {}

  /** What is read. */
  interface Reading<T> {
    T read() throws IOException, PlanFileException;
  }

  /**
   * What is read of that plan.
   *
   * @throws ExitException refused, with what to do
   */
  static <T> T of(Path plan, Reading<T> reading) {
    try {
      return reading.read();
    } catch (PlanFileException notAPlan) {
      throw ExitException.refused(plan + ": " + notAPlan.getMessage());
    } catch (NoSuchFileException missing) {
      throw ExitException.refused(
          missing.getFile()
              + " is not there; plan the week first, or give the folder or the plan.json of a plan");
    } catch (FileSystemException disk) {
      throw ExitException.refused(DiskWords.of(disk));
    } catch (IOException unreadable) {
      throw ExitException.refused(plan + " cannot be read: " + unreadable.getMessage());
    }
  }
}
