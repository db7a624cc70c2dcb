package org.tapeline.inventory.reconditioning;

import java.time.LocalDate;
import org.tapeline.inventory.reconditioning.BatchPlan.Shelf;

/** Why a helmet goes or waits, in sentences. */
record PlanWords(LocalDate today, LocalDate backOn, LocalDate seasonEnd, LocalDate seasonStart) {

  String tooOld(Standing s) {
    return "Reaches its last age on "
        + s.lastAgeThrough().plusDays(1)
        + ", before it could be back. Do not send it: retire it by then.";
  }

  String worn(Standing s) {
    LocalDate last = s.wearableThrough();
    if (last.isBefore(today)) {
      return "A player has it though its last day was " + last + ". Take it back now.";
    }
    return last.isBefore(seasonEnd)
        ? "A player has it. Give the player another by "
            + last
            + " and take this one back; then it can go."
        : "A player has it, and can wear it through the season. It can go when it is given back.";
  }

  String kept() {
    return "It is kept for a player. When that is over it is looked at again.";
  }

  String onHold() {
    return "It is on hold. What the hold asks for comes first.";
  }

  String noHelp(Standing s) {
    return s.helmet().state().equals("quarantined")
        ? "It is in quarantine and helps nobody here."
        : "Its last day is "
            + s.wearableThrough()
            + ", before it could be back on "
            + backOn
            + ": keeping it would help nobody.";
  }

  String offSeason() {
    return "No season until " + seasonStart + ", and it is back on " + backOn + ".";
  }

  String lastsTheSeason() {
    return "Can be worn through the season, which ends on " + seasonEnd + "; it goes after that.";
  }

  String needed(Standing s, Shelf shelf) {
    String where = shelf.place().map(p -> "at " + p).orElse("in all");
    String need =
        shelf
            .need()
            .map(
                n ->
                    shelf.stays()
                        + " of its size stay usable "
                        + where
                        + " and "
                        + n
                        + " are needed")
            .orElse("no forecast says how many of its size are needed");
    return "Kept: " + need + ". It must go when it lapses, on " + s.wearableThrough() + ".";
  }

  String spared(Shelf shelf) {
    return "Can be spared: "
        + shelf.stays()
        + " of its size stay usable in all and "
        + shelf.need().orElse(0)
        + " are needed.";
  }
}
