/**
 * Published values of units, each with its source beside it. A value reckoned here from a published factor says so: it
 * guards against a slip of ours and proves nothing about the factor.
 */
type Published = { readonly expected: number; readonly source: string }

export const usGallonInMillilitres: Published = {
  expected: 3785.411784,
  source: 'NIST Handbook 44, Appendix C: 1 gal = 231 in³ exactly; 1 in³ = 16.387064 mL exactly',
}
export const usFluidOunceInMillilitres: Published = {
  expected: 29.5735295625,
  source: 'NIST Handbook 44, Appendix C; NIST SP 811, exact factors',
}
export const imperialGallonInMillilitres: Published = {
  expected: 4546.09,
  source: 'NIST SP 811, exact factors; UK Weights and Measures Act 1985',
}
export const imperialFluidOunceInMillilitres: Published = {
  expected: 28.4130625,
  source: 'NIST Handbook 44, Appendix C: an imperial gallon is divided into 160 fluid ounces',
}
export const fortyUsGallonsInLitres: Published = {
  expected: 151.41647136,
  source: 'reckoned here from the exact factor 3.785411784: a regression',
}
export const hundredLitresInImperialGallons: Published = {
  expected: 21.996924829908778,
  source: 'reckoned here from 1 / 4.54609: a regression',
}
