package org.tapeline.fitting.phone;

import org.teavm.jso.JSExport;

/**
 * What the field app calls: this class and all that it uses is compiled to JavaScript when the
 * service is packaged, so that a rule has one home and a phone refuses with the same sentence.
 */
public final class Phone {
  private static FitCheckInHand check;

  private Phone() {}

  /**
   * Takes the protocol.
   *
   * @throws IllegalArgumentException for one with which no fit check can be done
   */
  @JSExport
  public static void begin(String protocol) {
    check = new FitCheckInHand(protocol);
  }

  /** See {@link FitCheckInHand#enter}. */
  @JSExport
  public static String enter(String events, String command, String facts) {
    return check.enter(events, command, facts);
  }

  /** See {@link FitCheckInHand#look}. */
  @JSExport
  public static String look(String events, String facts) {
    return check.look(events, facts);
  }

  /** Why the player may not have the helmet; empty when nothing stands against it. */
  @JSExport
  public static String refusal(String helmet, String player, String facts) {
    return CommandJson.refusal(
            JsonIn.read(helmet), java.util.UUID.fromString(player), JsonIn.read(facts))
        .orElse("");
  }

  /** See {@link TagText#problem}. */
  @JSExport
  public static String tagProblem(String typed) {
    return TagText.problem(typed);
  }

  /** The tag as it is written. */
  @JSExport
  public static String tag(String typed) {
    return CommandJson.tag(typed);
  }
}
