package org.tapeline.sizing.roster;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which players somebody looks for.
 *
 * @param fields the fields that the person may see; empty for all
 * @param field one of them; empty for each
 * @param team empty for each
 * @param words part of a name or of a roster number; empty for any
 */
record PlayerSearch(Optional<Set<String>> fields, String field, String team, String words) {

  String where() {
    StringBuilder where = new StringBuilder("1 = 1");
    fields.ifPresent(own -> where.append(" and field in :own"));
    if (!field.isEmpty()) {
      where.append(" and field = :field");
    }
    if (!team.isEmpty()) {
      where.append(" and team = :team");
    }
    if (!words.isEmpty()) {
      where.append(
          " and locate(:words, lower(givenName || ' ' || familyName || ' ' || number)) > 0");
    }
    return where.toString();
  }

  /** The parameters that {@link #where()} names. */
  Map<String, Object> with() {
    Map<String, Object> with = new HashMap<>();
    fields.ifPresent(own -> with.put("own", own));
    if (!field.isEmpty()) {
      with.put("field", field);
    }
    if (!team.isEmpty()) {
      with.put("team", team);
    }
    if (!words.isEmpty()) {
      with.put("words", words.toLowerCase(Locale.ROOT));
    }
    return with;
  }
}
