/**
 * Words of pictures: where text stands ({@code Detector}), what it says ({@code LineReader}) and
 * which words it makes ({@code WordSplitter}), with the PP-OCR v4 models run in this process.
 */
package commonsheet.sheet.ocr;
