package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.inventory.database.Database;

/** Makes tags for helmets that come without one. */
@ApplicationScoped
public class HelmetTags {
  private final Database database;
  private final String prefix;

  HelmetTags(
      Database database, @ConfigProperty(name = "tapeline.helmet.tag-prefix") String prefix) {
    this.database = database;
    this.prefix = prefix;
  }

  public AssetTag next() {
    long number =
        database.first("select nextval('helmet_number')", row -> row.getLong(1)).orElseThrow();
    AssetTag tag = AssetTag.withCheck(prefix + number);
    boolean taken =
        database.first("select 1 from helmet where tag = ?", row -> 1, tag.value()).isPresent();
    return taken ? next() : tag;
  }
}
