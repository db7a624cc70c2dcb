package org.tapeline.inventory.helmet;

import java.util.UUID;
import org.tapeline.journal.UuidV7;

/**
 * The forms on a helmet's page; the one that was refused keeps what was typed.
 *
 * @param refused which: {@code certification}, {@code return}, {@code move} or {@code retire};
 *     empty for none
 * @param wrong why, in words
 */
public record HelmetForm(String refused, String typed, String wrong) {
  static final HelmetForm BLANK = new HelmetForm("", "", "");

  /** Empty for a form that was not refused. */
  public String wrong(String form) {
    return form.equals(refused) ? wrong : "";
  }

  /** Why it was refused, when its form is no longer on the page because the helmet has changed. */
  public String lost(HelmetSheet sheet) {
    boolean there =
        switch (refused) {
          case "certification" -> sheet.may("RECERTIFY");
          case "return" -> sheet.may("RETURN");
          case "move" -> sheet.may("MOVE");
          default -> sheet.may("RETIRE");
        };
    return there ? "" : wrong;
  }

  /** What was typed in that form, else what stands there first. */
  public String typed(String form, String first) {
    return form.equals(refused) ? typed : first;
  }

  /** For each form its own: two of them are two commands. */
  public UUID commandId() {
    return UuidV7.next();
  }
}
