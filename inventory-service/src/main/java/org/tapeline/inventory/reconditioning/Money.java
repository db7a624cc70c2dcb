package org.tapeline.inventory.reconditioning;

import java.math.BigDecimal;
import java.util.Locale;

/** Amounts of the association's currency, in its hundredths. */
public record Money(long cents, String currency) {

  /** {@code USD 1,234.50}. */
  public String says() {
    BigDecimal amount = BigDecimal.valueOf(cents, 2);
    return currency + " " + String.format(Locale.US, "%,.2f", amount);
  }

  /** As it is typed: {@code 45.00}. */
  public String typed() {
    return BigDecimal.valueOf(cents, 2).toPlainString();
  }
}
