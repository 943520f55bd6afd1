package spangle.desk;

import java.util.Optional;
import java.util.OptionalDouble;
import spangle.fit.Body;
import spangle.fit.FitAnswer;
import spangle.fit.FitRequest;
import spangle.fit.KettleFit;
import spangle.fit.KettleWay;
import spangle.measure.Box;

/**
 * Loads what an answer about fit needs on a thread of its own, while the command line is still
 * being read: most of the time such an answer takes goes into loading the program.
 */
public final class HeadStart {
  /** Too long to go in level: the tilt is looked for too. */
  private static final Box ANY_PART = new Box(4250, 700, 400);

  private HeadStart() {}

  /** Begins and returns at once; changes nothing but how soon an answer comes. */
  public static void begin() {
    Thread thread = new Thread(HeadStart::answerOnce, "head start");
    thread.setDaemon(true);
    thread.start();
  }

  static Optional<FitAnswer> answerOnce() {
    return FitPlace.named(Optional.empty(), "kettle-medium", true)
        .place()
        .map(
            kettle ->
                KettleFit.answer(
                    new FitRequest(Body.of(ANY_PART), OptionalDouble.empty(), 0, kettle.rules()),
                    KettleWay.bare(kettle.station().space())));
  }
}
