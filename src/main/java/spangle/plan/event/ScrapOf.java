package spangle.plan.event;

import java.util.Locale;

/** Which pieces of a part were scrapped. */
public enum ScrapOf {
  /** Of those that were not hung yet. */
  WAITING,
  /** Of those that were finished, rejected and not hung again. */
  REJECTED;

  /** The word in files. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether the event says so. */
  public boolean in(Event event) {
    return event.of().equals(word());
  }
}
