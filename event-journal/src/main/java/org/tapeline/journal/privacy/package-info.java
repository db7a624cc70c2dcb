/** Proves that people's names and addresses stand nowhere but where they may. */
package org.tapeline.journal.privacy;
