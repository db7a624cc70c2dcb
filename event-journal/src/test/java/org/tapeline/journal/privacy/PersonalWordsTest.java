package org.tapeline.journal.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tapeline.journal.EventJson;

@DisplayName("The words by which people can be known")
class PersonalWordsTest {
  private final PersonalWords words = new PersonalWords();

  @BeforeEach
  void learn() throws JsonProcessingException {
    for (String person :
        new String[] {
          "{\"givenName\":\"Zoë\",\"familyName\":\"Quill-Moor\",\"birthDate\":\"2015-04-30\"}",
          "{\"name\":\"Tomás de Fern\",\"email\":\"Tomas.Fern@example.org\","
              + "\"phone\":\"+13035550142\"}"
        }) {
      words.addPerson(EventJson.MAPPER.readTree(person));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"player\":\"Zoë\"}",
        "the helmet of Quill-Moor, Z.",
        "(7,Tomás,\"(303) 555-0142\")",
        "born 2015-04-30T00:00:00Z",
        "sent to TOMAS.FERN@EXAMPLE.ORG.",
        "<tomas.fern@example.org>",
        "call 303.555.0142",
        "tel:+13035550142"
      })
  @DisplayName("are found in whatever way they are written in a row, a record or a log")
  void found(String text) {
    assertThat(words.in(text)).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "player 01a21d29-3430-77be-8f69-6ae9f9e0707e of U10-HAWKS at NORTH",
        "de facto",
        "position 90130355501427",
        "2015-04-3",
        "fitter.north@larkfield.example.org",
        "Zoës"
      })
  @DisplayName("are not seen where nobody is told of")
  void notFound(String text) {
    assertThat(words.in(text)).isEmpty();
  }

  @Test
  @DisplayName("are told by what they are and their first letters only")
  void notRepeated() {
    assertThat(words.in("Tomás wrote to tomas.fern@example.org on 2015-04-30"))
        .containsExactlyInAnyOrder("name To...", "address to...", "day of birth 20...");
  }

  @Test
  @DisplayName("of erased people are taken from lines as somebody wrote them down")
  void written() {
    PersonalWords erased = new PersonalWords();
    Stream.of("Wren Marrowby", "2014-05-20", "(303) 555-0187", "Tilda.Marrowby@example.org")
        .forEach(erased::addText);
    assertThat(erased.in("Marrowby; 2014-05-20; +1 303 555 0187; tilda.marrowby@example.org"))
        .hasSize(4);
  }
}
