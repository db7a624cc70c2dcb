package org.tapeline.fitting.evidence;

import java.time.Instant;

/**
 * What anybody who holds a sheet is told: nothing about the child, and no reason, which could say
 * something about the child too.
 *
 * @param headline what matters most, so that nobody reads "agrees" and stops there
 * @param agrees the facts on record are those that were printed
 * @param holds the sign-off is known to hold now
 */
record VerifyView(
    String headline,
    boolean agrees,
    boolean holds,
    String standing,
    String now,
    String printed,
    String tag,
    String signedOff,
    String zone,
    String protocol,
    int checks,
    String fingerprint) {

  static VerifyView of(SheetKey.Reference sheet, Evidence e, Standing standing, Instant now) {
    Moments moments = Moments.at(e.field());
    Fingerprint onRecord = Fingerprint.of(e);
    boolean agrees = onRecord.equals(sheet.fingerprint());
    return new VerifyView(
        agrees ? headline(standing) : "This paper does not agree with the record",
        agrees,
        standing instanceof Standing.Holds,
        said(standing, moments),
        moments.whole(now),
        moments.whole(sheet.printedAt()),
        e.tag(),
        moments.whole(e.at()),
        moments.zoneSaid(),
        e.protocol() + ", version " + e.protocolVersion(),
        e.answers().size(),
        onRecord.said());
  }

  private static String headline(Standing standing) {
    return switch (standing) {
      case Standing.Holds s -> "The sign-off holds";
      case Standing.Ended s -> "The sign-off has ended";
      case Standing.DoesNotHold s -> "The sign-off does not hold";
      case Standing.NotKnown s -> "Not known whether the sign-off holds";
    };
  }

  private static String said(Standing standing, Moments moments) {
    return switch (standing) {
      case Standing.Holds s ->
          s.checkDue() ? "It holds; a re-check of the fit is due." : "It holds.";
      case Standing.Ended s -> "It ended on " + moments.whole(s.at()) + ".";
      case Standing.DoesNotHold s -> "It does not hold.";
      case Standing.NotKnown s ->
          s.reason().startsWith("Not known") ? s.reason() + "." : "Not known right now.";
    };
  }
}
