package org.tapeline.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.RequestOptions;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.acceptance.Chromium.Screen;

class PagesTest {
  @Test
  @DisplayName("No page is wider than a phone or a desk, and none has an error in its scripts")
  void fitsTheScreen() {
    Page page = Chromium.windowOf("manager", Screen.DESK);
    List<String> errors = new ArrayList<>();
    page.onPageError(errors::add);
    page.onConsoleMessage(
        message -> {
          if (message.type().equals("error")) {
            errors.add(page.url() + ": " + message.text());
          }
        });
    keepADraft(page);
    for (Map.Entry<String, String> each : pages().entrySet()) {
      Response response = page.navigate(each.getValue());
      assertThat(response.status()).as(each.getValue()).isEqualTo(200);
      Look.at(page, each.getKey());
      assertThat(page.locator("main").count()).as(each.getValue()).isEqualTo(1);
      assertThat(page.title()).endsWith("Tapeline");
    }
    assertThat(errors).isEmpty();
  }

  /** Of the demo's charts with the medium of model A cut short, so that advice changes. */
  private static void keepADraft(Page page) {
    String csv;
    try {
      csv =
          Files.readString(Tapeline.ROOT.resolve("deploy/demo/larkfield-valley/charts.csv"))
              .replace("521,552", "521,540")
              .replace("556,585", "541,585");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    APIResponse kept =
        page.request()
            .post(
                "/sizing/api/import/charts?draft=true",
                RequestOptions.create()
                    .setHeader("Content-Type", "text/csv")
                    .setHeader("Idempotency-Key", UUID.randomUUID().toString())
                    .setData(csv));
    assertThat(kept.status()).as(kept.text()).isEqualTo(200);
  }

  /** Who would get which helmet before the season; it changes nothing. */
  private static String seasonPlan() {
    Tapeline.post("manager", "/inventory/api/plans", Map.of("sort", "season"));
    return Tapeline.get("manager", "/inventory/api/plans").at("/0/plan/plan").asText();
  }

  private static Map<String, String> pages() {
    String player = Tapeline.get("manager", "/sizing/api/players/LV-0001").path("player").asText();
    String tag = Tapeline.get("manager", "/inventory/api/helmets").path(0).path("tag").asText();
    String notice = Tapeline.get("manager", "/notify/api/notices").at("/notices/0/notice").asText();
    String correlation =
        Tapeline.get("manager", "/notify/api/notices/" + notice)
            .findValue("correlationId")
            .asText();
    String version =
        Tapeline.get("manager", "/sizing/api/players/LV-0001").at("/head/version").asText();
    Map<String, String> pages = new LinkedHashMap<>();
    pages.put("start", "/");
    pages.put("sign-in", "/sign-in");
    pages.put("measure-list", "/sizing/players");
    pages.put("measured-player", "/sizing/players/" + player);
    pages.put("measure", "/sizing/players/" + player + "/measure");
    pages.put("measuring-station", "/sizing/station");
    pages.put("corrections", "/sizing/corrections");
    pages.put("correction", "/sizing/corrections/" + player + "/" + version);
    pages.put("charts", "/sizing/charts");
    pages.put("chart-drafts", "/sizing/charts/drafts");
    pages.put("measurers", "/sizing/measurers");
    pages.put("measure-again", "/sizing/due");
    pages.put("size-mix", "/sizing/size-mix");
    pages.put("import-players", "/sizing/import");
    pages.put("fit-list", "/fitting/players");
    pages.put("fit-player", "/fitting/players/" + player);
    pages.put("fit-days", "/fitting/fit-days");
    pages.put("sideline", "/fitting/sideline");
    pages.put("today", "/fitting/today");
    pages.put("recheck-plan", "/fitting/recheck-plan");
    pages.put("conditions", "/fitting/conditions");
    pages.put("concussion", "/fitting/concussion/" + player);
    pages.put("protocol", "/fitting/protocol");
    pages.put("helmets", "/inventory/helmets");
    pages.put("helmet", "/inventory/helmets/" + tag);
    pages.put("damage-start", "/inventory/damage");
    pages.put("damage-where", "/inventory/helmets/" + tag + "/damage");
    pages.put("damage-what", "/inventory/helmets/" + tag + "/damage?where=shell");
    pages.put("damage-check", "/inventory/helmets/" + tag + "/damage?where=shell&what=crack");
    pages.put("inspections", "/inventory/inspections");
    pages.put("depot", "/inventory/");
    pages.put("helmets-by-place", "/inventory/grid/helmets");
    pages.put("parts-by-place", "/inventory/grid/parts");
    pages.put("what-is-short", "/inventory/short?all=yes");
    pages.put("waiting", "/inventory/waiting");
    pages.put("find", "/inventory/search?q=a&stay=yes");
    pages.put("stock", "/inventory/stock");
    pages.put("stock-count", "/inventory/stock/count?place=NORTH&book=shown");
    pages.put("stock-move", "/inventory/stock/move");
    pages.put("stock-ledger", "/inventory/stock/ledger?place=NORTH&item=valve");
    pages.put("stock-checks", "/inventory/stock/checks");
    pages.put("restock", "/inventory/restock");
    pages.put("holds", "/inventory/holds");
    pages.put("hold-new", "/inventory/holds/new");
    pages.put("plans", "/inventory/plans");
    pages.put("plan", "/inventory/plans/" + seasonPlan());
    pages.put("reconditioning", "/inventory/reconditioning");
    pages.put("outlook", "/inventory/outlook");
    pages.put("import-stock", "/inventory/import");
    pages.put("notices", "/notify/notices");
    pages.put("calls", "/notify/calls");
    pages.put("guidance", "/notify/guidance/es");
    pages.put("causes", "/notify/causes");
    pages.put("contacts", "/notify/contacts?q=hawks");
    pages.put("notice", "/notify/notices/" + notice);
    pages.put("people-not-reached", "/notify/unreached");
    pages.put("slips", "/notify/teams/U10-HAWKS/sheet");
    pages.put("words", "/notify/words");
    pages.put("words-one", "/notify/words/do-not-wear-dated?language=es");
    pages.put("retention", "/notify/retention");
    pages.put("chain", "/chains/" + correlation);
    pages.put("mailbox", "/mailbox");
    return pages;
  }
}
