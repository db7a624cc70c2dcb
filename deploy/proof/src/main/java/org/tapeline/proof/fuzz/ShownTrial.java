package org.tapeline.proof.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.tapeline.proof.fuzz.shown.MailHeads;
import org.tapeline.proof.fuzz.shown.MarkedSeason;
import org.tapeline.proof.fuzz.shown.PageWalk;
import org.tapeline.proof.fuzz.wire.Wire;

/** Marked texts are brought in first and looked for on every page, in every table and mail. */
final class ShownTrial {
  private static final List<String> STARTS =
      List.of(
          "/",
          "/sizing/players",
          "/sizing/charts",
          "/sizing/import",
          "/fitting/today",
          "/fitting/players",
          "/fitting/sideline",
          "/fitting/fit-days",
          "/inventory/",
          "/inventory/helmets",
          "/inventory/stock",
          "/inventory/holds",
          "/inventory/plans",
          "/inventory/restock",
          "/inventory/import",
          "/inventory/labels",
          "/inventory/waiting",
          "/inventory/reconditioning",
          "/inventory/outlook",
          "/inventory/inspections",
          "/notify/notices",
          "/notify/contacts?q=x",
          "/notify/contacts?q=marked",
          "/notify/unreached",
          "/notify/calls",
          "/notify/causes",
          "/notify/words",
          "/mailbox",
          "/mailbox/texts",
          "/sizing/api/charts.csv",
          "/sizing/api/size-mix/csv");

  private final Target target;
  private final FuzzOptions options;
  private final Tally tally;
  private final Told told;
  private final Wire wire;

  ShownTrial(Target target, FuzzOptions options, Tally tally, Told told) {
    this.target = target;
    this.options = options;
    this.tally = tally;
    this.told = told;
    this.wire = new Wire(target.host(), options.patience());
  }

  void bringMarks() throws IOException {
    MarkedSeason.Outcome outcome =
        new MarkedSeason(wire, target.ports().gateway(), manager())
            .bring(DemoCsv.of(options.root()));
    told.line("imported rows with marks: taken %d, refused %d", outcome.taken(), outcome.refused());
    outcome.wrong().forEach(wrong -> violated("import", wrong));
  }

  void look() throws IOException {
    PageWalk walk = new PageWalk(wire, target.ports().gateway(), manager(), this::violated);
    List<String> starts = new ArrayList<>(STARTS);
    PageWalk.Seen seen = walk.walk(starts, options.pages());
    told.line(
        "looked at %d pages, %d tables, %d other files; marks shown as text in %d",
        seen.pages(), seen.tables(), seen.others(), seen.marked());
    Path mails = options.data().resolve("mail");
    if (Files.isDirectory(mails)) {
      List<Path> forged = MailHeads.forged(mails);
      told.line("mails with a header from data %d", forged.size());
      forged.forEach(mail -> violated("mail", "a header from data in " + mail.getFileName()));
    }
  }

  private void violated(String where, String what) {
    tally.violated(new Tally.Violation(where, what, "marked texts", "GET " + where));
  }

  private static String manager() {
    return Target.login(Target.USERS.getFirst());
  }
}
