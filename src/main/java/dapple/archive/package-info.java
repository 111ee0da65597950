/** Everything, or a year of a site, in one file: nightly backups, records for an inspector, and taking them in. */
package dapple.archive;
