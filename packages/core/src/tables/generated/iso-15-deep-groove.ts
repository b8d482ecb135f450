// Generated from reference/bearing/iso-15-deep-groove.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';
import { runs } from '../runs.js';

/** Boundary dimensions of deep groove ball bearings (source iso-15; held as: page). */
export const iso15DeepGroove: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly designation: readonly string[];
    readonly dimensionSeries: readonly string[];
    readonly boreMm: readonly number[];
    readonly outsideMm: readonly number[];
    readonly widthMm: readonly number[];
    readonly cornerMinMm: readonly number[];
    readonly held: readonly ('page' | 'memory')[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'iso-15-deep-groove',
  source: 'iso-15',
  clause: 'dimension series 18, 19, 00, 10, 02, 03, 04',
  held: 'page',
  rowCount: 159,
  columns: {
    designation: ['61800', '61801', '61802', '61803', '61804', '61805', '61806', '61807', '61808', '61809', '61810', '61811', '61812', '61813', '61814', '61815', '61816', '61817', '61818', '61819', '61820', '61900', '61901', '61902', '61903', '61904', '61905', '61906', '61907', '61908', '61909', '61910', '61911', '61912', '61913', '61914', '61915', '61916', '61917', '61918', '61919', '61920', '16000', '16001', '16002', '16003', '16004', '16005', '16006', '16007', '16008', '16009', '16010', '16011', '16012', '16013', '16014', '16015', '16016', '16017', '16018', '16019', '16020', '6000', '6001', '6002', '6003', '6004', '6005', '6006', '6007', '6008', '6009', '6010', '6011', '6012', '6013', '6014', '6015', '6016', '6017', '6018', '6019', '6020', '6200', '6201', '6202', '6203', '6204', '6205', '6206', '6207', '6208', '6209', '6210', '6211', '6212', '6213', '6214', '6215', '6216', '6217', '6218', '6219', '6220', '6300', '6301', '6302', '6303', '6304', '6305', '6306', '6307', '6308', '6309', '6310', '6311', '6312', '6313', '6314', '6315', '6316', '6317', '6318', '6319', '6320', '6403', '6404', '6405', '6406', '6407', '6408', '6409', '6410', '6411', '6412', '6413', '6414', '6415', '6416', '6417', '6418', '6419', '6420', '623', '624', '625', '626', '627', '628', '629', '604', '605', '606', '607', '608', '609', '634', '635'],
    dimensionSeries: runs([['18', 21], ['19', 21], ['00', 21], ['10', 21], ['02', 21], ['03', 21], ['04', 18], ['02', 7], ['10', 6], ['03', 2]]),
    boreMm: among([10, 12, 15, 17, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100, 3, 4, 5, 6, 7, 8, 9], 'abcdefghijklmnopqrstuabcdefghijklmnopqrstuabcdefghijklmnopqrstuabcdefghijklmnopqrstuabcdefghijklmnopqrstuabcdefghijklmnopqrstudefghijklmnopqrstuvwxyzABwxyzABwx'),
    outsideMm: among([19, 21, 24, 26, 32, 37, 42, 47, 52, 58, 65, 72, 78, 85, 90, 95, 100, 110, 115, 120, 125, 22, 28, 30, 55, 62, 68, 80, 105, 130, 140, 35, 75, 145, 150, 40, 160, 170, 180, 190, 200, 215, 210, 225, 240, 250, 10, 13, 16, 12, 14, 17], 'abcdefghijklmnopqrstuvcwxfghyzAlBnoqCrtuDEdweFghyzAGBopqrsuDEHIdweFghyzAGBopqrsuDEHIxeFJhizlBnoqrtuDEIKLMFfghizlBoqrtDEIKLMNOPzlBoqrtDEIKMNOQRSTUVWavcdXYZavcWa'),
    widthMm: among([5, 7, 9, 10, 13, 6, 12, 16, 18, 20, 8, 11, 14, 15, 22, 24, 17, 19, 21, 23, 25, 26, 28, 30, 32, 34, 27, 29, 31, 33, 35, 37, 39, 41, 43, 45, 47, 42, 48, 52, 54, 55, 58, 4], 'aaaabbbbbbbcdddddeeeeffbbcccdgggeeehhhiiijbbkkkkcccddllleemmhhhkkcdggemnhhiiijjoopppcdlgmnhqirjsotpuvwxyzlgemnqrstuABCDEFGHIJKqrstuABCDEFLJMNOPQRaafbkkRaffbbaf'),
    cornerMinMm: among([0.3, 0.6, 1, 1.1, 1.5, 2, 2.1, 3, 4, 0.15, 0.2], 'aaaaaaaaaaaaabbbbccccaaaaaaabbbbccccccddddaaaaaaaaabbbbbbbbbcccaaaabbcccccdddddddeeebbbbcccddddeeeeefffggbcccdddeeeffggggghhhhddeeeffgggghhhiiiijkaaaaakkaaaaaa'),
    held: among(['page', 'memory'], 'aaabbbbbbbbbbbbbbbbbbaaabbbbbbbbbbbbbbbbbbbaabbbbbbbbbbbbbbbbbbaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaababbbbabbbbbbbbbbbbbbbbbbbbbbbbbbbbbbabaabbabaababba'),
  },
  marks: {
  },
};
