package org.tapeline.stack.launch;

/** What a person needs to know once everything runs. */
final class Greeting {
  private Greeting() {}

  static String text(Ports ports, boolean demo) {
    String address = "http://localhost:" + ports.gateway();
    String users =
        """

        Sign in with the password larkfield as
          fitter.north   fitter at the fields NORTH and RIVER   %1$s/fitting/players
          fitter.south   fitter at the field SOUTH
          coach.hawks    coach of U10-HAWKS                     %1$s/fitting/sideline
          depot          warehouse                              %1$s/inventory/restock
          manager        equipment manager                      %1$s
        """
            .formatted(address);
    return """

    Tapeline runs at %1$s
    The mailbox is at %1$s/mailbox, text messages are at %1$s/mailbox/texts
    %2$s%3$s
    Ctrl-C stops everything.
    """
        .formatted(address, users, demo ? "" : "\nNo demo was loaded.\n");
  }
}
