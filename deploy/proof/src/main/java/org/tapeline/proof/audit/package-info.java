/** What of others is in the services and the gateway: in which versions, under which licences. */
package org.tapeline.proof.audit;
