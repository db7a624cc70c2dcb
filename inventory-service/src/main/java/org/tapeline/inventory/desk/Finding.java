package org.tapeline.inventory.desk;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.HelmetAccess;
import org.tapeline.inventory.helmet.NearTags;
import org.tapeline.inventory.helmet.TagReading;
import org.tapeline.inventory.helmet.TagText;
import org.tapeline.inventory.helmet.Words;

/** Looks everywhere for what was typed; a fitter finds only what is at the own fields. */
@ApplicationScoped
public class Finding {
  private static final int MOST = 20;
  private static final String OWN =
      " and (?::text is null or h.place = any (string_to_array(?, ',')) or h.holder in"
          + " (select player from player_field where field = any (string_to_array(?, ','))))";
  private static final String HELMET =
      "select h.tag, h.model, h.size, h.place, h.state from helmet h where ";

  private final Database database;
  private final HelmetAccess access;
  private final TagReading tags;

  Finding(Database database, HelmetAccess access, TagReading tags) {
    this.database = database;
    this.access = access;
    this.tags = tags;
  }

  /** The exact ones first; near ones only when nothing is exact. */
  public List<Hit> find(String typed) {
    String own = access.bounds().map(fields -> String.join(",", fields)).orElse(null);
    boolean all = own == null;
    List<Hit> hits = new ArrayList<>(helmets(typed, own));
    hits.addAll(playersOf(typed, own));
    hits.addAll(byId(typed, own, all));
    if (all) {
      hits.addAll(places(typed));
      hits.addAll(parts(typed));
    }
    List<Hit> exact = hits.stream().filter(Hit::exact).toList();
    return exact.isEmpty()
        ? Stream.concat(hits.stream(), nearTags(typed, own).stream()).distinct().toList()
        : Stream.concat(exact.stream(), hits.stream().filter(h -> !h.exact())).toList();
  }

  private List<Hit> helmets(String typed, String own) {
    String text = tags.tag(typed).orElseGet(() -> TagText.written(typed));
    if (text.length() < 4) {
      return List.of();
    }
    return database.list(
        HELMET
            + "(h.tag = ? or position(? in h.tag) > 0)"
            + OWN
            + " order by h.tag <> ?, h.tag limit "
            + MOST,
        row -> helmet(row, row.getString("tag").equals(text)),
        text,
        text,
        own,
        own,
        own,
        text);
  }

  private List<Hit> nearTags(String typed, String own) {
    String near = String.join(",", NearTags.of(typed));
    return near.isEmpty()
        ? List.of()
        : database.list(
            HELMET
                + "h.tag = any (string_to_array(?, ','))"
                + OWN
                + " order by h.tag limit "
                + MOST,
            row -> helmet(row, false),
            near,
            own,
            own,
            own);
  }

  private static Hit helmet(ResultSet row, boolean exact) throws SQLException {
    String tag = row.getString("tag");
    String more =
        Words.model(row.getString("model"))
            + ", "
            + Words.code(row.getString("size"))
            + ", "
            + row.getString("place")
            + ", "
            + Words.code(row.getString("state")).toLowerCase(Locale.ROOT);
    return new Hit("Helmet", tag, more, "/inventory/helmets/" + tag, exact);
  }

  /** By a whole id, or by its short form: the last eight characters. */
  private List<Hit> byId(String typed, String own, boolean all) {
    String text = typed.strip().toLowerCase(Locale.ROOT);
    if (!text.matches("[0-9a-f]{6,8}|[0-9a-f-]{9,36}")) {
      return List.of();
    }
    String end = "%" + text;
    List<Hit> hits = new ArrayList<>();
    if (all) {
      hits.addAll(requests(end));
    }
    hits.addAll(cases(end, own));
    hits.addAll(players("player::text like ?", end, own));
    return hits;
  }

  private List<Hit> requests(String end) {
    return database.list(
        "select request, place, item, state from restock where request::text like ? limit " + MOST,
        row -> {
          UUID request = row.getObject("request", UUID.class);
          String more =
              Words.item(row.getString("item"))
                  + " for "
                  + row.getString("place")
                  + ", "
                  + row.getString("state");
          return new Hit(
              "Request",
              Words.shortly(request),
              more,
              "/inventory/restock#request-" + request,
              true);
        },
        end);
  }

  private List<Hit> cases(String end, String own) {
    return database.list(
        "select refit_case, field, open from refit_case where refit_case::text like ?"
            + " and (?::text is null or field = any (string_to_array(?, ','))) limit "
            + MOST,
        row -> {
          UUID id = row.getObject("refit_case", UUID.class);
          String more = row.getString("field") + (row.getBoolean("open") ? ", open" : ", over");
          return new Hit("Re-fit", Words.shortly(id), more, "/inventory/cases/" + id, true);
        },
        end,
        own,
        own);
  }

  private List<Hit> playersOf(String typed, String own) {
    return players("number = ?", typed.strip().toUpperCase(Locale.ROOT), own);
  }

  private List<Hit> players(String which, String value, String own) {
    return database.list(
        "select player, coalesce(number, right(player::text, 8)) as said, field"
            + " from player_field where "
            + which
            + " and (?::text is null or field = any (string_to_array(?, ','))) limit "
            + MOST,
        row -> {
          UUID id = row.getObject("player", UUID.class);
          return new Hit(
              "Player",
              row.getString("said"),
              row.getString("field"),
              "/inventory/players/" + id,
              true);
        },
        value,
        own,
        own);
  }

  private List<Hit> places(String typed) {
    String text = typed.strip().toLowerCase(Locale.ROOT);
    return text.length() < 2
        ? List.of()
        : database.list(
            "select code, name, kind from place where position(? in lower(code)) > 0"
                + " or position(? in lower(name)) > 0 order by lower(code) <> ?, name limit "
                + MOST,
            row -> {
              String code = row.getString("code");
              boolean exact =
                  code.equalsIgnoreCase(text) || row.getString("name").equalsIgnoreCase(text);
              return new Hit(
                  "Place",
                  row.getString("name"),
                  code + ", " + row.getString("kind"),
                  "/inventory/grid/helmets?place=" + code,
                  exact);
            },
            text,
            text,
            text);
  }

  private List<Hit> parts(String typed) {
    String text = typed.strip().toLowerCase(Locale.ROOT);
    return text.length() < 2 ? List.of() : partsLike(text);
  }

  private List<Hit> partsLike(String text) {
    return database
        .list("select distinct item from ledger_entry order by 1", row -> row.getString(1))
        .stream()
        .flatMap(item -> part(item, text).stream())
        .limit(MOST)
        .toList();
  }

  private static Optional<Hit> part(String item, String text) {
    String said = Words.code(item).toLowerCase(Locale.ROOT);
    boolean exact = item.equals(text) || said.equals(text);
    return exact || item.contains(text) || said.contains(text)
        ? Optional.of(
            new Hit("Part", Words.code(item), item, "/inventory/grid/parts?item=" + item, exact))
        : Optional.empty();
  }
}
