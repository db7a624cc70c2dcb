package org.tapeline.proof.faults.compare;

import java.sql.SQLException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tapeline.proof.faults.process.Part;

/**
 * Every chain has ended as it must: whoever lost a sign-off has an open re-fit case; whatever an
 * open case needs is kept for it or on its way, and fitting knows that; the case has a slot, or no
 * slot is free from the day on which it can be served.
 */
final class RefitChains implements Check {
  private static final String NAME = "re-fits";
  private static final String NEEDS =
      """
      select n.refit_case, n.need_key, n.status, r.tag, r.status as kept,
             (select count(*) from restock_cause c join restock s using (request)
               where c.refit_case = n.refit_case and c.need_key = n.need_key
                 and s.state in ('requested', 'picked', 'shipped')) as requested
        from case_need n join refit_case c on c.refit_case = n.refit_case and c.open
        left join reservation r on r.refit_case = n.refit_case and r.need_key = n.need_key
             and r.status = 'live'
      """;
  private static final String UNBOOKED_THOUGH_FREE =
      """
      select c.refit_case, c.field, d.starts_at from refit_case c
        cross join lateral (
          select max(arrives_at) as at, bool_and(arrives_at is not null) as known
            from refit_need n where n.refit_case = c.refit_case) ready
        cross join lateral (
          select s.starts_at from fit_slot s join fit_day f using (fit_day)
           where f.field = c.field and not f.cancelled and s.refit_case is null
             and s.starts_at >= greatest(ready.at, now()) limit 1) d
       where c.status = 'open' and ready.known
         and not exists (select 1 from fit_slot t where t.refit_case = c.refit_case)
      """;

  @Override
  public void look(Evidence evidence, Findings findings) throws SQLException {
    Set<String> open = openCases(evidence, findings);
    Set<String> players = new HashSet<>();
    for (Event event : evidence.of(Part.FITTING, "refit-opened")) {
      if (open.contains(event.text("refitCase")) && !players.add(event.text("player"))) {
        findings.doubled(NAME, event + ": the player has another open case");
      }
    }
    withdrawn(evidence, players, findings);
    served(evidence, open, findings);
    booked(evidence, open, findings);
    findings.looked("open re-fit cases", open.size());
    findings.looked("re-fit cases", evidence.of(Part.FITTING, "refit-opened").size());
  }

  private static Set<String> openCases(Evidence evidence, Findings findings) throws SQLException {
    Set<String> open = new HashSet<>();
    evidence.of(Part.FITTING, "refit-opened").forEach(e -> open.add(e.text("refitCase")));
    evidence.of(Part.FITTING, "refit-closed").forEach(e -> open.remove(e.text("refitCase")));
    for (Part service : new Part[] {Part.FITTING, Part.INVENTORY}) {
      String where = service == Part.FITTING ? "status = 'open'" : "open";
      Set<String> there = new HashSet<>();
      evidence
          .rows(service, "select refit_case from refit_case where " + where)
          .forEach(row -> there.add(row.get("refit_case")));
      findings.same(NAME, "open cases in the table of " + service.code(), open, there);
    }
    return open;
  }

  /** Who handed the helmet on has another; everybody else who may not wear it needs a new fit. */
  private static void withdrawn(Evidence evidence, Set<String> withCase, Findings findings)
      throws SQLException {
    for (Map<String, String> row :
        evidence.rows(
            Part.FITTING,
            "select player, tag, why from sign_off where state = 'withdrawn'"
                + " and why <> 'handed-on'")) {
      if (!withCase.contains(row.get("player"))) {
        findings.lost(NAME, "withdrawn and no case: " + row);
      }
    }
  }

  private static void served(Evidence evidence, Set<String> open, Findings findings)
      throws SQLException {
    Map<String, String> known = new HashMap<>();
    evidence
        .rows(
            Part.FITTING,
            "select refit_case, need_key, tag, arrives_at is not null as dated from refit_need")
        .forEach(
            row ->
                known.put(
                    row.get("refit_case") + " " + row.get("need_key"),
                    row.get("tag") + " " + row.get("dated")));
    List<Map<String, String>> needs = evidence.rows(Part.INVENTORY, NEEDS);
    Set<String> served = new HashSet<>();
    for (Map<String, String> need : needs) {
      served.add(need.get("refit_case"));
      boolean kept = need.get("kept").equals("live");
      if (!kept && need.get("requested").equals("0")) {
        findings.lost(NAME, "neither kept nor requested: " + need);
      }
      findings.same(
          NAME,
          "what fitting knows of " + need,
          (kept ? need.get("tag") : "") + " t",
          known.getOrDefault(need.get("refit_case") + " " + need.get("need_key"), "nothing"));
    }
    open.stream()
        .filter(refitCase -> !served.contains(refitCase))
        .forEach(refitCase -> findings.lost(NAME, "inventory knows no need of case " + refitCase));
    findings.looked("needs of open cases", needs.size());
  }

  private static void booked(Evidence evidence, Set<String> open, Findings findings)
      throws SQLException {
    for (Map<String, String> row : evidence.rows(Part.FITTING, UNBOOKED_THOUGH_FREE)) {
      findings.lost(NAME, "not booked though a slot is free: " + row);
    }
    Map<String, String> last = new HashMap<>();
    for (Event event : evidence.journal(Part.FITTING)) {
      if (event.is("refit-booked")) {
        last.put(event.text("refitCase"), event.text("fitDay"));
      } else if (event.is("refit-unbooked") || event.is("refit-closed")) {
        last.remove(event.text("refitCase"));
      }
    }
    Map<String, String> slots = new HashMap<>();
    for (Map<String, String> row :
        evidence.rows(
            Part.FITTING,
            "select refit_case, fit_day from fit_slot where refit_case is not null")) {
      if (slots.put(row.get("refit_case"), row.get("fit_day")) != null) {
        findings.doubled(NAME, "two slots for case " + row.get("refit_case"));
      }
    }
    findings.same(NAME, "slots by the journal and by the table", last, slots);
    findings.looked("booked re-fits", open.stream().filter(slots::containsKey).count());
  }
}
