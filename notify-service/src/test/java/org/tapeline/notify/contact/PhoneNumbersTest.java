package org.tapeline.notify.contact;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A telephone number")
class PhoneNumbersTest {
  private final PhoneNumbers phones = new PhoneNumbers();

  @Test
  @DisplayName("that may be a mobile phone's is in no doubt")
  void mobile() {
    assertThat(phones.doubt("+13035550101")).isEmpty();
    assertThat(phones.doubt("+447400123456")).isEmpty();
  }

  @Test
  @DisplayName("of a land line or a service is valid, and said to be no mobile phone's")
  void notMobile() {
    assertThat(phones.doubt("+442079460018")).contains("land line");
    assertThat(phones.doubt("+18002345678")).contains("service number");
  }

  @Test
  @DisplayName("that cannot be one is said to be not valid")
  void notValid() {
    assertThat(phones.doubt("+1303555")).contains("not a valid");
    assertThat(phones.doubt("nonsense")).contains("not a valid");
  }
}
