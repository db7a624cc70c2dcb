package org.tapeline.proof.faults.compare;

import com.fasterxml.jackson.databind.JsonNode;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.tapeline.proof.faults.process.Part;

/**
 * Each family has been told once of each thing, and a mail went out for each notice. A try that was
 * cut off after the mail server took it is made again under the same Message-ID, which mail
 * programs show once: that is one notice, and is only counted.
 */
final class Notices implements Check {
  private static final String NAME = "notices";
  private static final Set<String> ENDED = Set.of("notice-cancelled", "notice-undeliverable");

  @Override
  public void look(Evidence evidence, Findings findings) throws SQLException {
    Map<String, Event> raised = new TreeMap<>();
    Set<String> sent = new HashSet<>();
    Set<String> byMail = new HashSet<>();
    Set<String> ended = new HashSet<>();
    for (Event event : evidence.journal(Part.NOTIFY)) {
      String notice = event.text("notice");
      if (event.is("notice-raised") && raised.put(notice, event) != null) {
        findings.doubled(NAME, event + " was raised before");
      } else if (event.is("notice-sent")) {
        sent.add(notice);
        if (event.text("channel").equals("mail")) {
          byMail.add(notice);
        }
      } else if (ENDED.contains(event.type())) {
        ended.add(notice);
      }
    }
    onceEach(raised.values(), ended, findings);
    for (Event event : raised.values()) {
      if (!sent.contains(event.text("notice")) && !ended.contains(event.text("notice"))) {
        findings.lost(NAME, event + " was neither sent nor ended");
      }
    }
    mails(evidence, raised, byMail, findings);
    openCasesTold(evidence, findings);
    openRequestsTold(evidence, findings);
    findings.looked("notices", raised.size());
    findings.looked("notices sent", sent.size());
  }

  /** Of two live notices of a kind to one person, none may be of the same cause. */
  private static void onceEach(Iterable<Event> raised, Set<String> ended, Findings findings) {
    Map<String, Event> told = new HashMap<>();
    for (Event event : raised) {
      if (ended.contains(event.text("notice"))) {
        continue;
      }
      for (JsonNode cause : event.data().path("causes")) {
        String what = event.text("kind") + " " + event.text("recipient") + " " + cause.asText();
        Event before = told.put(what, event);
        if (before != null) {
          findings.doubled(NAME, before + " and " + event + " tell the same: " + what);
        }
      }
    }
  }

  private static void mails(
      Evidence evidence, Map<String, Event> raised, Set<String> byMail, Findings findings)
      throws SQLException {
    Mails mails = Mails.in(evidence.place().data().resolve("mail"));
    Set<String> tried = new HashSet<>();
    evidence
        .rows(Part.NOTIFY, "select distinct notice from notice_try where channel = 'mail'")
        .forEach(row -> tried.add(row.get("notice")));
    byMail.stream()
        .filter(notice -> !mails.byNotice().containsKey(notice))
        .forEach(notice -> findings.lost(NAME, "sent, and no mail came: " + raised.get(notice)));
    long again = 0;
    long unnoticed = 0;
    for (Map.Entry<String, Integer> mail : mails.byNotice().entrySet()) {
      again += mail.getValue() - 1L;
      if (!byMail.contains(mail.getKey())) {
        unnoticed++;
        if (!tried.contains(mail.getKey())) {
          findings.doubled(NAME, "a mail came for which there is no try: " + mail.getKey());
        }
      }
    }
    findings.looked("mails", mails.byNotice().values().stream().mapToLong(i -> i).sum());
    findings.looked("mails, of these sent again with the same id", again);
    findings.looked("mails, of these taken without our knowing", unnoticed);
    if (mails.others() > 0) {
      findings.differing(NAME, mails.others() + " mails have no id of ours");
    }
  }

  /** Each guardian with an address knows of the open case, and of its slot. */
  private static void openCasesTold(Evidence evidence, Findings findings) throws SQLException {
    Map<String, List<String>> slotsTold = new HashMap<>();
    evidence
        .rows(
            Part.NOTIFY,
            "select c.refit_case, c.recipient, coalesce(c.slot_starts_at::text, 'no date') as slot"
                + " from notice_cover c join notice n using (notice)"
                + " where c.refit_case is not null and n.state in ('sent', 'acknowledged')")
        .forEach(
            row ->
                slotsTold
                    .computeIfAbsent(
                        row.get("refit_case") + " " + row.get("recipient"), k -> new ArrayList<>())
                    .add(row.get("slot")));
    List<Map<String, String>> toTell =
        evidence.rows(
            Part.NOTIFY,
            "select r.refit_case, g.guardian, coalesce(r.starts_at::text, 'no date') as slot"
                + " from refit_case r join guardianship s using (player)"
                + " join guardian g using (guardian)"
                + " where r.outcome is null and r.opened_event is not null"
                + " and g.email is not null");
    for (Map<String, String> row : toTell) {
      List<String> told =
          slotsTold.getOrDefault(row.get("refit_case") + " " + row.get("guardian"), List.of());
      if (told.isEmpty()) {
        findings.lost(NAME, "nothing was told of " + row);
      } else if (!told.contains(row.get("slot"))) {
        findings.lost(NAME, "told were the slots " + told + ", and not that of " + row);
      }
    }
    findings.looked("guardians of open cases", toTell.size());
  }

  /** A depot has heard of each open request, with the amount that is needed now. */
  private static void openRequestsTold(Evidence evidence, Findings findings) throws SQLException {
    List<Map<String, String>> open =
        evidence.rows(
            Part.NOTIFY,
            "select request, o.quantity, coalesce(t.quantity, 0) as told"
                + " from restock_open o left join restock_told t using (request)");
    open.stream()
        .filter(row -> !row.get("quantity").equals(row.get("told")))
        .forEach(row -> findings.lost(NAME, "the depot was not told how it stands: " + row));
    findings.looked("open restock requests", open.size());
  }
}
