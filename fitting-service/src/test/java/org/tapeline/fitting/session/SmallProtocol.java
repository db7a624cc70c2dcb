package org.tapeline.fitting.session;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Check.Severity;
import org.tapeline.fitting.protocol.Check.Way;
import org.tapeline.fitting.protocol.Fittings;
import org.tapeline.fitting.protocol.Otherwise;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.protocol.Remedy;

/** Four checks that together have every kind of way out; invented for the tests. */
final class SmallProtocol {
  static final String SCREWS = "screws";
  static final String SNUG = "snug";
  static final String STRAP = "strap";
  static final String NOSE = "nose";
  static final int HOURS = 12;

  private SmallProtocol() {}

  static Protocol version(int version) {
    return new Protocol(
        "small",
        version,
        "Small",
        HOURS,
        List.of(screws(), snug(), strap(), nose()),
        new Fittings(Set.of(), Map.of()),
        Map.of());
  }

  private static Check screws() {
    Remedy kit = Remedy.once("kit", "Replace it", List.of(SCREWS), List.of("hardware-kit"));
    return check(
        SCREWS,
        "hardware",
        Severity.UNSAFE_HELMET,
        new Way("damaged", "Broken", List.of(), helmet(Otherwise.Helmet.SAME)),
        new Way("loose", "Loose", List.of(kit), part("hardware-kit")));
  }

  private static Check snug() {
    Remedy more = Remedy.once("add-air", "Add air", List.of(SNUG, STRAP), List.of());
    Remedy less = Remedy.once("let-air-out", "Let air out", List.of(SNUG, STRAP), List.of());
    return check(
        SNUG,
        "sides",
        Severity.POOR_FIT,
        new Way("loose", "Loose", List.of(more), helmet(Otherwise.Helmet.SMALLER)),
        new Way("tight", "Tight", List.of(less), helmet(Otherwise.Helmet.LARGER)));
  }

  private static Check strap() {
    Remedy tighten = Remedy.once("tighten", "Tighten", List.of(STRAP), List.of());
    Remedy swap = Remedy.once("new-strap", "Take another", List.of(), List.of("cup-s", "cup-m"));
    return check(
        STRAP,
        "chin-strap",
        Severity.POOR_FIT,
        new Way("loose", "Loose", List.of(tighten, swap), part("cup-s")));
  }

  private static Check nose() {
    return check(
        NOSE,
        "front-back",
        Severity.POOR_FIT,
        new Way("tight", "Near", List.of(), helmet(Otherwise.Helmet.OTHER_MODEL)));
  }

  private static Check check(String id, String axis, Severity severity, Way... ways) {
    return new Check(
        id,
        "Is " + id + " right?",
        "Look",
        "Yes",
        axis,
        severity,
        "",
        List.of(ways),
        Optional.empty());
  }

  private static Otherwise helmet(Otherwise.Helmet which) {
    return new Otherwise(Optional.of(which), Optional.empty());
  }

  private static Otherwise part(String item) {
    return new Otherwise(Optional.empty(), Optional.of(item));
  }
}
