// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

/**
 * The style of HTML pages. The colours of the signal words are those of ISO 3864-2:2016: high RAL 3001 with white
 * text, medium RAL 2010 and low RAL 1003 with black text, mandatory RAL 5005 for NOTICE.
 */
final class HtmlStyle {

    static final String CSS = """
            :root { --ink: #1b1d20; --paper: #ffffff; --soft: #f0f1f3; --line: #b9bec5; --link: #0b5394; }
            @media (prefers-color-scheme: dark) {
            :root { --ink: #e8e9eb; --paper: #17191c; --soft: #24272c; --line: #555b64; --link: #8ab8f0; }
            }
            body { margin: 0; background: var(--paper); color: var(--ink); font: 1rem/1.5 sans-serif; }
            main { max-width: 52rem; margin: 0 auto; padding: 1rem; }
            h1 { line-height: 1.2; }
            h2 { margin-top: 2rem; border-bottom: 1px solid var(--line); }
            a, .element { color: var(--link); }
            .wide { overflow-x: auto; }
            table { border-collapse: collapse; margin: 1rem 0; width: 100%; }
            caption { text-align: left; font-weight: bold; padding: .3rem 0; }
            th, td { border: 1px solid var(--line); padding: .3rem .5rem; text-align: left; vertical-align: top; }
            th { background: var(--soft); }
            dl { display: grid; grid-template-columns: minmax(8rem, auto) 1fr; gap: .2rem 1rem; }
            dt { font-weight: bold; }
            dd { margin: 0; }
            .step { margin: 1.2rem 0 .3rem; }
            .number { font-weight: bold; font-size: 1.15rem; margin-right: .4rem; }
            .sign { display: block; margin-top: .4rem; }
            .banner { padding: .6rem .9rem; margin: .6rem 0; border: 2px solid var(--line); font-weight: bold; }
            .invented { background: var(--soft); border-style: dashed; }
            .stop { background: #9B2423; color: #ffffff; border-color: #9B2423; }
            .attention, .caution-banner { border-color: #F9A800; border-left-width: .8rem; }
            .hazard { margin: 1.2rem 0 .6rem; border: 3px solid; break-inside: avoid; break-after: avoid; }
            .hazard p { margin: .4rem .8rem; }
            .hazard .signal { margin: 0; padding: .2rem .8rem; font-weight: bold; letter-spacing: .06em; }
            .danger { border-color: #9B2423; }
            .danger .signal { background: #9B2423; color: #ffffff; }
            .warning { border-color: #D05D29; }
            .warning .signal { background: #D05D29; color: #000000; }
            .caution { border-color: #F9A800; }
            .caution .signal, .hazard-unsorted .signal { background: #F9A800; color: #000000; }
            .hazard-unsorted { border-color: #F9A800; }
            .notice { border-color: #005387; }
            .notice .signal { background: #005387; color: #ffffff; }
            figure { margin: 1rem 0; }
            img { max-width: 100%; }
            @page { margin: 14mm 12mm 16mm; @bottom-right { content: counter(page) " of " counter(pages); font: 8pt sans-serif; } }
            @media print {
            :root { --ink: #000000; --paper: #ffffff; --soft: #ffffff; --line: #777777; --link: #000000; }
            body { font: 9.5pt/1.35 sans-serif; }
            h1 { font-size: 16pt; margin: 0 0 .4rem; }
            h2 { font-size: 12pt; margin: .9rem 0 .3rem; }
            h3, h4 { font-size: 10.5pt; margin: .6rem 0 .2rem; }
            p, ul, ol, dl { margin: .3rem 0; }
            table { margin: .4rem 0; }
            th, td { padding: .1rem .3rem; }
            .step { margin: .5rem 0 .15rem; }
            .hazard { margin: .5rem 0 .3rem; border-width: 2px; }
            .hazard p { margin: .15rem .5rem; }
            .banner { padding: .3rem .6rem; }
            main { max-width: none; padding: 0; }
            .wide { overflow: visible; }
            .banner, .hazard .signal { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
            h1, h2, h3, h4, caption { break-after: avoid; }
            tr, figure, .step, .banner { break-inside: avoid; }
            thead { display: table-header-group; }
            }
            """;

    /** Says at the foot of every sheet of paper what the banner says on the first. */
    static final String INVENTED_FOOT = """
            @page { @bottom-left { content: "%s"; font: bold 8pt sans-serif; } }
            """.formatted(Texts.INVENTED);

    /** For what must lie on one page of A4. */
    static final String ONE_PAGE = """
            @page { size: A4; margin: 12mm 14mm; }
            main { max-width: 44rem; }
            body { font-size: .9rem; line-height: 1.35; }
            h1 { font-size: 1.5rem; margin: .2rem 0 .5rem; }
            h2 { font-size: 1.05rem; margin: .6rem 0 .2rem; }
            .banner { padding: .2rem .6rem; margin: .3rem 0; }
            table { margin: .4rem 0; }
            p, ul { margin: .4rem 0; }
            dl { margin: .4rem 0; }
            figure { margin: .4rem 0; }
            figure img { max-height: 4.2cm; }
            @media print { body { font-size: 9pt; } }
            """;

    private HtmlStyle() {
    }
}
