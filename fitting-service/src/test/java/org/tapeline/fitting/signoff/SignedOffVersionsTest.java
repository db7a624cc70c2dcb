package org.tapeline.fitting.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tapeline.fitting.signoff.SignOffEvent.Conditions;
import org.tapeline.fitting.signoff.SignOffEvent.SignedOff;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.EventTypes;
import org.tapeline.testkit.EventContracts;

@DisplayName("A sign-off that was written in an older version")
class SignedOffVersionsTest {
  private static final String TYPE = "org.tapeline.fitting.signed-off.v";
  private static final EventContracts CONTRACTS = EventContracts.load();

  private final EventTypes types = SignedOffVersions.declareOn(EventTypes.of("fitting"));

  private SignedOff read(int version) {
    JsonNode example = CONTRACTS.exampleOf(TYPE + version);
    return (SignedOff) types.read(TYPE + version, example.toString());
  }

  @Test
  @DisplayName("is read with what it did not say left open")
  void read() {
    SignedOff newest = read(3);
    assertThat(read(1).conditions()).isEqualTo(Conditions.NOT_NOTED);
    assertThat(read(2).conditions()).isEqualTo(newest.conditions());
    for (int older = 1; older <= 2; older++) {
      SignedOff read = read(older);
      assertThat(read.protocol()).isEqualTo("not-stated");
      assertThat(read.protocolVersion()).isZero();
      assertThat(read)
          .usingRecursiveComparison()
          .ignoringFields("conditions", "protocol", "protocolVersion")
          .isEqualTo(newest);
    }
  }

  @ParameterizedTest(name = "version {0}")
  @ValueSource(ints = {1, 2, 3})
  @DisplayName("keeps every version's contract, read or written")
  void contracts(int version) throws JsonProcessingException {
    JsonNode asNewest = EventJson.MAPPER.readTree(types.write(read(version)));
    CONTRACTS.validateProduced(TYPE + 3, asNewest);
    EventTypes older = types.writing("fitting.signed-off.v" + version);
    assertThat(older.nameOf(read(3)).text()).isEqualTo(TYPE + version);
    JsonNode written = EventJson.MAPPER.readTree(older.write(read(3)));
    CONTRACTS.validateProduced(TYPE + version, written);
  }
}
