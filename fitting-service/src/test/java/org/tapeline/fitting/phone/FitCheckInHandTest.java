package org.tapeline.fitting.phone;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.protocol.Protocols;
import org.tapeline.journal.EventJson;

@DisplayName("The fit check on a phone without signal")
class FitCheckInHandTest {
  private static final UUID SESSION = UUID.fromString("0198f0c2-1111-7000-8000-000000000001");
  private static final UUID PLAYER = UUID.fromString("0198f0c2-2222-7000-8000-000000000002");
  private static final UUID OTHER = UUID.fromString("0198f0c2-3333-7000-8000-000000000003");

  private final Protocol protocol = Protocols.builtIn();
  private FitCheckInHand inHand;
  private ArrayNode events;
  private String helmet;

  @BeforeEach
  void opened() {
    inHand = new FitCheckInHand(json(protocol));
    events = EventJson.MAPPER.createArrayNode();
    helmet = helmet("available", "");
    enter("'kind':'open','session':'" + SESSION + "','player':'" + PLAYER + "','field':'NORTH'");
  }

  private static String helmet(String state, String more) {
    return "{'tag':'A12425GABC1234002M','model':'model-a','size':'youth-medium','place':'NORTH',"
        + ("'state':'" + state + "'" + more + "}");
  }

  private String facts() {
    return ("{'team':'U10-HAWKS','fitter':'fitter.north','today':'2026-08-01','altitudeM':30,"
            + "'models':{'model-a':['youth-small','youth-medium','youth-large']},"
            + "'advisedNow':[{'model':'model-a','size':'youth-medium'}],'shelf':["
            + helmet
            + "],'advised':[{'model':'model-a','size':'youth-medium'}],'helmet':"
            + helmet
            + "}")
        .replace('\'', '"');
  }

  private JsonNode enter(String command) {
    String whole = ("{" + command + ",'at':'2026-08-01T10:00:00Z'}").replace('\'', '"');
    JsonNode decision = read(inHand.enter(events.toString(), whole, facts()));
    decision.path("events").forEach(events::add);
    return decision;
  }

  private JsonNode look() {
    return read(inHand.look(events.toString(), facts()));
  }

  private JsonNode putOn() {
    return enter("'kind':'helmet','tag':'a12425 gabc1234002m','sizeLabel':'youth-medium'");
  }

  private void passAll() {
    for (Check check : protocol.checks()) {
      enter("'kind':'checks','check':'" + check.id() + "','result':'pass'");
    }
  }

  @Test
  @DisplayName("goes from opening to a pass, with every check as it was answered")
  void passes() {
    assertThat(putOn().path("accepted").asBoolean()).isTrue();
    passAll();
    JsonNode passed = enter("'kind':'pass','airCelsius':21.5,'hair':'usual','parts':[]");
    JsonNode event = passed.path("events").path(0);
    assertThat(event.path("type").asText()).isEqualTo("fit-passed");
    assertThat(event.at("/data/checks")).hasSize(protocol.checks().size());
    assertThat(event.at("/data/conditions/airCelsius").asDouble()).isEqualTo(21.5);
    assertThat(look().path("status").asText()).isEqualTo("passed");
  }

  @Test
  @DisplayName("refuses a pass with open checks, in the service's words")
  void open() {
    putOn();
    JsonNode refused = enter("'kind':'pass','parts':[]");
    assertThat(refused.path("accepted").asBoolean()).isFalse();
    assertThat(refused.path("sentence").asText()).startsWith("Still to be passed: ");
  }

  @Test
  @DisplayName("refuses a helmet in quarantine and one that is kept for another player")
  void notFree() {
    helmet = helmet("quarantined", "");
    assertThat(putOn().path("sentence").asText()).contains("in quarantine");
    helmet = helmet("available", ",'keptFor':['" + OTHER + "']");
    assertThat(putOn().path("sentence").asText()).contains("kept for another player");
    helmet = helmet("issued", ",'holder':'" + PLAYER + "'");
    assertThat(putOn().path("accepted").asBoolean()).isTrue();
  }

  @Test
  @DisplayName("shows the next check, and for a failed one what is left to try")
  void next() {
    assertThat(look().at("/next/kind").asText()).isEqualTo("put-on");
    assertThat(look().at("/next/tags/0").asText()).isEqualTo("A12425GABC1234002M");
    putOn();
    assertThat(look().at("/next/check").asText()).isEqualTo(protocol.checks().getFirst().id());
    enter("'kind':'checks','check':'snug','result':'fail','finding':'loose'");
    assertThat(look().at("/next/kind").asText()).isEqualTo("try");
    assertThat(look().path("failed").asText()).isEqualTo("snug");
    while (check("snug").path("remedies").size() > 0) {
      String remedy = check("snug").at("/remedies/0/remedy").asText();
      assertThat(tried(remedy)).isTrue();
      enter("'kind':'checks','check':'snug','result':'fail','finding':'loose'");
    }
    assertThat(look().at("/next/kind").asText()).isIn("measure-again", "end-without-fit");
    assertThat(look().at("/needs/0/size").asText()).isEqualTo("youth-small");
  }

  private boolean tried(String remedy) {
    return enter("'kind':'adjustments','check':'snug','remedy':'" + remedy + "'")
        .path("accepted")
        .asBoolean();
  }

  private JsonNode check(String id) {
    for (JsonNode check : look().path("checks")) {
      if (check.path("id").asText().equals(id)) {
        return check;
      }
    }
    throw new AssertionError("No check " + id);
  }

  @Test
  @DisplayName("goes on with what another phone recorded, whatever is in it")
  void readsWhatItWrites() {
    putOn();
    enter("'kind':'checks','check':'snug','result':'fail','finding':'loose','valueMm':3.5");
    enter("'kind':'adjustments','check':'snug','remedy':'add-air'");
    enter("'kind':'checks','check':'snug','result':'fail','finding':'tight'");
    enter("'kind':'passed-over','check':'snug','remedy':'let-air-out','why':'not-possible'");
    enter("'kind':'corrections','check':'snug','why':'wrong-button'");
    enter("'kind':'pause'");
    enter("'kind':'resume'");
    enter("'kind':'fail','needs':[{'kind':'part','item':'chin-strap-small'}]");
    assertThat(EventsJson.read(events.toString()).stream().map(e -> EventsOut.write(e).toString()))
        .isEqualTo(events.valueStream().map(JsonNode::toString).toList());
  }

  private static String json(Object value) {
    try {
      return EventJson.MAPPER.writeValueAsString(value);
    } catch (JsonProcessingException e) {
      throw new AssertionError(e);
    }
  }

  private static JsonNode read(String text) {
    try {
      return EventJson.MAPPER.readTree(text);
    } catch (JsonProcessingException e) {
      throw new AssertionError(text, e);
    }
  }
}
