/** What every page needs: the site, the clock, formats, the layout's data, errors, cautions, authors of changes. */
package dapple.site;
