package org.tapeline.inventory.whole;

import java.util.Locale;
import java.util.UUID;
import org.tapeline.inventory.database.Database;

/** Players with their fields and sizes, as they were copied from sizing. */
record Roster(Database database) {

  /** A player of that field, for whom a size of a model is advised. */
  UUID player(String field, String model, String size) {
    UUID player = UUID.randomUUID();
    database.change("insert into player_field values (?, ?)", player, field);
    advised(player, model, size, 1);
    return player;
  }

  void advised(UUID player, String model, String size, int choice) {
    database.change(
        "insert into advised_size values (?, ?, ?, ?, null)", player, model, size, choice);
  }

  /** A field that no other test uses, 25 minutes from the depot. */
  String freshField() {
    String field = "F-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
    Depot.importing(
            "places",
            "all-or-none",
            "code,name,kind,altitude_m,time_zone\n"
                + field
                + ",Field "
                + field
                + ",field,1600,America/Denver\n")
        .statusCode(200);
    Depot.importing("travel", "all-or-none", "from,to,minutes\nDEPOT," + field + ",25\n")
        .statusCode(200);
    return field;
  }
}
