/**
 * How many random files are made and read back. STILLROOT_EXPORTS=2000 asks for a thorough run.
 */
export const EXPORTS = Number(process.env['STILLROOT_EXPORTS'] ?? 500);
