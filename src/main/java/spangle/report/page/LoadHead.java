package spangle.report.page;

import java.util.List;

/**
 * What every load sheet begins with.
 *
 * @param id load number
 * @param anchor place on the page
 * @param page "1 of 2" where a load needs more than one sheet; else empty
 * @param carrier what it hangs on and which of them
 * @param line the line
 * @param start when hanging begins
 * @param colour finish in words
 * @param code the shop's code for it; may be empty
 * @param hatch name of the hatch that stands for it
 * @param patch drawing of colour and hatch
 * @param qr drawing of the load number's code
 * @param stops its way
 * @param due earliest due time of what hangs on it
 * @param kits kits served; may be empty
 * @param gates how the gates of its parts stand, line by line
 */
public record LoadHead(
    String id,
    String anchor,
    String page,
    String carrier,
    String line,
    String start,
    String colour,
    String code,
    String hatch,
    String patch,
    String qr,
    List<Stop> stops,
    String due,
    String kits,
    List<String> gates) {
  /** Copies the lists. */
  public LoadHead {
    stops = List.copyOf(stops);
    gates = List.copyOf(gates);
  }
}
