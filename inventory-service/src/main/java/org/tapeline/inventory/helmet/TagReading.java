package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.TagText.Good;
import org.tapeline.inventory.helmet.TagText.NoTag;
import org.tapeline.inventory.helmet.TagText.Slip;
import org.tapeline.journal.quarkus.http.Problem;

/** Reads tags as people of this association type and scan them. */
@ApplicationScoped
public class TagReading {
  private static final int MOST = 5;

  private final Database database;
  private final String giaiPrefix;

  TagReading(
      Database database,
      @ConfigProperty(name = "tapeline.helmet.giai-prefix") Optional<String> giaiPrefix) {
    this.database = database;
    this.giaiPrefix = giaiPrefix.map(String::strip).orElse("");
    if (!this.giaiPrefix.matches("|[0-9]{4,12}")) {
      throw new IllegalArgumentException("tapeline.helmet.giai-prefix is 4 to 12 digits, or empty");
    }
  }

  public TagText read(String typed) {
    return TagText.read(typed, giaiPrefix);
  }

  /** The tag, when it is one and its check character fits. */
  public Optional<String> tag(String typed) {
    return read(typed) instanceof Good good ? Optional.of(good.tag().value()) : Optional.empty();
  }

  /**
   * @throws Problem 400 that says what is wrong, for the field {@code tag}
   */
  public String needed(String typed) {
    return switch (read(typed)) {
      case Good good -> good.tag().value();
      case Slip slip -> throw wrong(slip.sentence());
      case NoTag none -> throw wrong(none.sentence());
    };
  }

  private static Problem wrong(String sentence) {
    return Problem.badRequest("tag", sentence, new Problem.FieldError("tag", sentence));
  }

  /** Helmets that are known here and whose tag may have been meant; at most five. */
  public List<String> known(String typed) {
    return read(typed) instanceof Slip slip
        ? database.list(
            "select tag from helmet where tag = any (string_to_array(?, ',')) order by tag limit "
                + MOST,
            row -> row.getString(1),
            String.join(",", slip.near()))
        : List.of();
  }
}
