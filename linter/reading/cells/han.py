"""Chinese words in traditional characters to the simplified ones that the data files hold.

Half of the characters are Japanese ones as well (``軸``, ``機``); a text is taken for Chinese only where it holds one
that Japanese writes otherwise (``徑``, ``內``) or a word of Chinese alone. The characters are those of the words of the
trade (common practice).
"""

import re

#: Traditional and simplified character one behind the other: first those that Japanese writes otherwise.
_CHINESE = (
    "徑径寬宽圓圆內内壓压彈弹溫温單单圖图號号邊边擋挡鋁铝鑄铸鐵铁銹锈墊垫襯衬擺摆數数擊击雙双與与殘残餘余狀状鏈链帶带驅驱壽寿齡龄"
    "氣气鋅锌鎂镁鈦钛鎢钨黃黄滾滚錐锥實实觸触圍围條条從从鬆松續续斷断變变轉转點点殼壳體体據据兩两勞劳靜静傳传裝装屬属疊叠檔档總总"
    "對对應应參参橫横豎竖說说關关緣缘處处擴扩齒齿樞枢釐厘顆颗聯联頸颈稱称專专滿满驗验產产鋰锂縱纵濕湿夾夹"
    "鏽锈彎弯塵尘迴回發发臺台顯显嚴严營营獨独當当將将盡尽雜杂"
)
_JAPANESE_TOO = (
    "緊紧類类額额葉叶潔洁極极霧雾環环膠胶際际補补為为緩缓連连載载係系剛刚溝沟損损鋼钢種种動动質质負负潤润節节運运無无備备註注車车機机"
    "側侧後后級级組组長长開开閉闭預预規规標标範范熱热軸轴輪轮風风電电輸输計计設设項项態态準准調调針针銅铜間间衝冲層层導导鎖锁鍵键"
    "許许給给術术適适構构軌轨測测檢检結结記记銷销離离強强選选週周個个積积輕轻時时軟软絕绝線线細细維维黏黏勢势臨临階阶員员業业儀仪"
    "閥阀鍍镀鎳镍鉻铬錫锡純纯噴喷達达進进審审訂订減减懸悬縮缩織织終终證证試试該该語语樣样況况淨净濾滤爐炉異异監监"
    "盤盘禮礼穩稳筆笔簡简編编紙纸現现礎础約约則则勁劲塊块塗涂攪搅書书渦涡燒烧確确綜综縫缝聲声蝕蚀覽览護护貼贴輔辅"
    "輥辊鈑钣隨随險险響响頂顶順顺頻频認认場场過过蓋盖沖冲龍龙"
)
_TABLE = str.maketrans(dict(zip((_CHINESE + _JAPANESE_TOO)[::2], (_CHINESE + _JAPANESE_TOO)[1::2], strict=True)))
_IS_CHINESE = re.compile(f"[{_CHINESE[::2]}的預額檢註週黏]|軸[承向心]|跳動|負載|極限偏差|值")
_KANA = re.compile("[\u3040-\u30ff]")


def simplified(text: str, sure: bool = True) -> str:
    """A text in traditional Chinese with simplified characters; empty where it is none.

    Where it need not be sure, a text counts that may be Japanese by its characters.
    """
    if text.isascii() or (sure and not _IS_CHINESE.search(text)) or _KANA.search(text):
        return ""
    plain = text.translate(_TABLE)
    return plain if plain != text else ""
