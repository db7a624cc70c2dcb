package org.tapeline.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The genuine tokens of all kinds of links, each tried at the addresses of all others. */
@DisplayName("A link's token")
class LinkPurposesTest {
  private static final String SLOT = "/fitting/slot/";
  private static final Map<String, List<String>> ADDRESSES =
      Map.of(
          "notice", List.of("/notify/n/%s", "/notify/n/%s/refit.ics"),
          "wishes", List.of("/notify/c/%s"),
          "slot", List.of(SLOT + "%s", SLOT + "%s/refit.ics"),
          "calendar", List.of("/fitting/calendar/%s/fit-days.ics"),
          "sheet", List.of("/fitting/verify/%s"),
          "unsubscribe", List.of("/notify/unsubscribe/%s"));

  @Test
  @DisplayName("opens what it was made for, and nothing of any other kind, in any service")
  void eachForItself() {
    Map<String, String> tokens = tokens();
    tokens.forEach(
        (kind, token) ->
            ADDRESSES.forEach(
                (other, addresses) ->
                    addresses.forEach(
                        address -> {
                          int status = Raw.get(address.formatted(token), Map.of()).status();
                          assertThat(status)
                              .as("the token of " + kind + " at " + address)
                              .isEqualTo(kind.equals(other) ? 200 : 404);
                        })));
  }

  @Test
  @DisplayName("shows a page that says nobody's whole name, the child's own neither")
  void namesNobody() {
    AccessNames names = new AccessNames();
    MailedLinks links = linksOfAnOpenCase();
    for (String path :
        List.of(
            "/notify/n/" + links.notice(), "/notify/c/" + links.wishes(), SLOT + links.slot())) {
      String page = Raw.page(path);
      assertThat(page).as(path).contains("<main");
      assertThat(names.othersIn(page, AccessRole.NOBODY)).as(path).isEmpty();
    }
  }

  private static Map<String, String> tokens() {
    MailedLinks links = linksOfAnOpenCase();
    Map<String, String> tokens = new LinkedHashMap<>();
    tokens.put("notice", links.notice());
    tokens.put("wishes", links.wishes());
    tokens.put("slot", links.slot());
    tokens.put(
        "calendar",
        MailedLinks.found(
            "/fitting/calendar/([A-Za-z0-9_-]+)/", Raw.page("fitter.north", "/fitting/fit-days")));
    return tokens;
  }

  /** Of the mail to a family whose child waits for a re-fit that has its date. */
  private static MailedLinks linksOfAnOpenCase() {
    for (JsonNode refit : Tapeline.get("manager", "/fitting/api/refits")) {
      JsonNode player =
          Tapeline.get("manager", "/sizing/api/players/" + refit.path("player").asText());
      String family = DemoRoster.guardianOf(player.path("number").asText()).orElse("nobody");
      if (refit.path("booking").has("startsAt") && !Post.to(family).isEmpty()) {
        return MailedLinks.ofTheNewestTo(family);
      }
    }
    throw new IllegalStateException("The demo season has an open re-fit that a family was told of");
  }
}
