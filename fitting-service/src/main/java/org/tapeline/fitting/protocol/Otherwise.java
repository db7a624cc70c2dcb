package org.tapeline.fitting.protocol;

import java.util.Optional;

/**
 * What a re-fit needs when no remedy helps: another helmet or a part, exactly one of the two.
 *
 * @param part the code of the item
 */
public record Otherwise(Optional<Helmet> helmet, Optional<String> part) {

  /** Which other helmet. */
  public enum Helmet {
    /** Of the same model, one size smaller. */
    SMALLER,
    /** Of the same model, one size larger. */
    LARGER,
    /** Of the same model and size: this one is at fault, not its size. */
    SAME,
    /** Of another model: this shape does not suit the head. */
    OTHER_MODEL
  }

  public Otherwise {
    if (helmet.isPresent() == part.isPresent()) {
      throw new IllegalArgumentException("A way out is a helmet or a part");
    }
  }

  /** What it comes to, in words. */
  public String said() {
    return helmet
        .map(
            which ->
                switch (which) {
                  case SMALLER -> "a smaller helmet";
                  case LARGER -> "a larger helmet";
                  case SAME -> "another helmet of this size";
                  case OTHER_MODEL -> "a helmet of another model";
                })
        .orElseGet(() -> "from stock: " + part.orElseThrow().replace('-', ' '));
  }
}
