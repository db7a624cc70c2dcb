package org.tapeline.inventory.books;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;

/** Whether the books are what the journal says, as JSON. */
@Path("/api/stock/check")
@RolesAllowed("equipment-manager")
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class BooksResource {
  private final BooksCheck check;

  BooksResource(BooksCheck check) {
    this.check = check;
  }

  @GET
  public BooksCheck.Found run() {
    return check.run();
  }
}
